namespace Batch.SampleMaker.Week;

/// <summary>Invented names of passengers; no two in the same week are alike.</summary>
public static class PeopleNames
{
    private static readonly string[] First =
    [
        "Adra", "Bevin", "Calla", "Dorrin", "Elswyn", "Farrow", "Gilda", "Hesper", "Idrin", "Jorra", "Kestrel", "Lorcan", "Maren", "Nevin", "Odette", "Perrin",
        "Quilla", "Rowan", "Sabra", "Torben",
        "Una", "Vesper", "Wilder", "Xanthe", "Yorick", "Zella", "Ansel", "Brisa", "Corwin",
    ];

    private static readonly string[] Last =
    [
        "Ashmoor", "Brandel", "Crestley", "Dunwharf", "Eskelund", "Fairholt", "Grenmark", "Hallowby", "Inverrin", "Jessamor", "Kettlewen", "Larkwood",
        "Mossgrave", "Nethersole", "Orchardine", "Pellworth",
        "Quayle-Orrin", "Ravenstow", "Silverlane", "Thornaby-Vane", "Umberline", "Vellacourt", "Westerdune", "Yarrowick", "Zellinger-Moor", "Amberholt",
        "Birchmere", "Coldstrand", "Drayhollow", "Elmersett",
        "Fallowden",
    ];

    /// <summary>The name with a number from 0; different for all numbers below 24,000, a middle letter told from the 900th on.</summary>
    public static string Of(int number)
    {
        var round = number / (First.Length * Last.Length);
        var middle = round == 0 ? " " : " " + (char)('A' + round - 1) + ". ";
        return First[number % First.Length] + middle + Last[number * 3 % Last.Length];
    }
}
