using System.Globalization;

namespace Batch.Flight.Earth;

/// <summary>
/// The coefficients of the World Magnetic Model 2025, read from the file as published (WMM2025.COF, header 2025.0 WMM-2025 11/13/2024).
/// Made by NOAA's National Centers for Environmental Information and the British Geological Survey; in the public domain.
/// </summary>
internal sealed class MagneticCoefficients
{
    /// <summary>Greatest degree and order of the model.</summary>
    public const int Degrees = 12;

    /// <summary>Number of places a table of degree n and order m takes.</summary>
    public const int Count = (Degrees + 1) * (Degrees + 2) / 2;

    /// <summary>The published model.</summary>
    public static readonly MagneticCoefficients Published = Load();

    private readonly Term[] _terms = new Term[Count];

    private MagneticCoefficients(double epoch) => Epoch = epoch;

    /// <summary>The moment of the main field [decimal year].</summary>
    public double Epoch { get; }

    /// <summary>The terms, at <see cref="Place"/> of their degree and order.</summary>
    public ReadOnlySpan<Term> Terms => _terms;

    /// <summary>Where a degree and order stand in a table.</summary>
    public static int Place(int degree, int order) => degree * (degree + 1) / 2 + order;

    private static MagneticCoefficients Load()
    {
        using var stream = typeof(MagneticCoefficients).Assembly.GetManifestResourceStream("WMM2025.COF")
            ?? throw new InvalidOperationException("The magnetic model is not in the program.");
        using var reader = new StreamReader(stream);
        var header = Fields(reader.ReadLine());
        var model = new MagneticCoefficients(Number(header[0]));
        var read = 0;
        while (reader.ReadLine() is { } line && !line.StartsWith("9999", StringComparison.Ordinal))
        {
            var fields = Fields(line);
            var place = Place(int.Parse(fields[0], CultureInfo.InvariantCulture), int.Parse(fields[1], CultureInfo.InvariantCulture));
            model._terms[place] = new Term(Number(fields[2]), Number(fields[3]), Number(fields[4]), Number(fields[5]));
            read++;
        }

        return read == Count - 1 ? model : throw new InvalidOperationException("The magnetic model is not complete in the program.");
    }

    private static string[] Fields(string? line) => (line ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>One term of the model.</summary>
    /// <param name="G">Schmidt quasi-normal g [nT].</param>
    /// <param name="H">Schmidt quasi-normal h [nT].</param>
    /// <param name="GRate">Yearly change of g [nT/year].</param>
    /// <param name="HRate">Yearly change of h [nT/year].</param>
    internal readonly record struct Term(double G, double H, double GRate, double HRate);
}
