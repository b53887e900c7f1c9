using System.Collections.Frozen;
using System.Globalization;
using Batch.Sheets.Figures;

namespace Batch.Sheets.Pictures;

/// <summary>How a picture writes: its words, the unit of its weights, its manner of writing numbers. A template can choose all three.</summary>
internal sealed record PictureStyle
{
    /// <summary>English words, pounds, the invariant manner of writing numbers.</summary>
    public static PictureStyle Usual { get; } = new();

    /// <summary>How numbers are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;

    /// <summary>Unit of weights and fuel: lb or kg.</summary>
    public string WeightUnit { get; init; } = "lb";

    /// <summary>Words in place of the English ones; a word that is not here stays English.</summary>
    public FrozenDictionary<string, string> Words { get; init; } = FrozenDictionary<string, string>.Empty;

    /// <summary>A word of <see cref="PictureWords"/> in the language of the sheet.</summary>
    /// <exception cref="ArgumentException">It is not one of those words: a fault of the program.</exception>
    public string Word(string english) => PictureWords.All.Contains(english)
        ? Words.GetValueOrDefault(english, english)
        : throw new ArgumentException(english + " is not among the words of pictures.", nameof(english));

    /// <summary>A number with thousands marks.</summary>
    public string Number(double value, int decimals = 0) =>
        Quantity.Text(Math.Round(value, decimals, MidpointRounding.AwayFromZero), decimals, isSigned: false, Culture);

    /// <summary>A weight [lb] in the unit of the style.</summary>
    public double Weight(double lb) => WeightUnit == "kg" ? lb * Pounds.KilogramsPerPound : lb;
}
