namespace Batch.SampleMaker.Week;

/// <summary>Invented names of passengers; no two in the same week are alike.</summary>
public static class PeopleNames
{
    private static readonly string[] First =
    [
        "Adra", "Bevin", "Calla", "Dorrin", "Elswyn", "Farrow", "Gilda", "Hesper", "Idrin", "Jorra", "Kestrel", "Lorcan", "Maren", "Nevin", "Odette", "Perrin", "Quilla", "Rowan", "Sabra", "Torben",
        "Una", "Vesper", "Wilder", "Xanthe", "Yorick", "Zella", "Ansel", "Brisa", "Corwin",
    ];

    private static readonly string[] Last =
    [
        "Ashmoor", "Brandel", "Crestley", "Dunwharf", "Eskelund", "Fairholt", "Grenmark", "Hallowby", "Inverrin", "Jessamor", "Kettlewen", "Larkwood", "Mossgrave", "Nethersole", "Orchardine", "Pellworth",
        "Quayle-Orrin", "Ravenstow", "Silverlane", "Thornaby-Vane", "Umberline", "Vellacourt", "Westerdune", "Yarrowick", "Zellinger-Moor", "Amberholt", "Birchmere", "Coldstrand", "Drayhollow", "Elmersett",
        "Fallowden",
    ];

    /// <summary>The name with a number from 0; different for the first 899 numbers.</summary>
    public static string Of(int number) => First[number % First.Length] + " " + Last[number * 3 % Last.Length];

    /// <summary>How many different names there are.</summary>
    public static int Count => First.Length * Last.Length;
}
