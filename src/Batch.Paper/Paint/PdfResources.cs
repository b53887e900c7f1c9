using System.Globalization;
using Batch.Paper.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace Batch.Paper.Paint;

/// <summary>Fonts, pictures and opacities of one document, named in the order of first use, shared by all its pages.</summary>
internal sealed class PdfResources(PdfDocument document)
{
    private readonly Dictionary<TrueTypeFont, (string Name, PdfDictionary Object, Dictionary<ushort, string> Glyphs)> _fonts = [];
    private readonly Dictionary<byte[], (string Name, PdfImage Object)> _images = [];
    private readonly Dictionary<(double, double), (string Name, PdfDictionary Object)> _alphas = [];

    public string Font(TrueTypeFont font, ImmutableArray<ushort> glyphs, ImmutableArray<string> texts)
    {
        if (!_fonts.TryGetValue(font, out var known))
            _fonts[font] = known = ("/F" + (_fonts.Count + 1).ToString(CultureInfo.InvariantCulture), PdfParts.Indirect(document), []);

        for (var i = 0; i < glyphs.Length; i++) known.Glyphs.TryAdd(glyphs[i], glyphs[i] == 0 ? "\uFFFD" : texts[i]);
        return known.Name;
    }

    public string Image(byte[] bytes)
    {
        if (_images.TryGetValue(bytes, out var known)) return known.Name;
        using var stream = new MemoryStream(bytes);
        var image = new PdfImage(document, XImage.FromStream(stream));
        if (image.Reference is null) document.Internals.AddObject(image);
        known = ("/I" + (_images.Count + 1).ToString(CultureInfo.InvariantCulture), image);
        _images[bytes] = known;
        return known.Name;
    }

    public string Alpha(double fill, double stroke)
    {
        if (_alphas.TryGetValue((fill, stroke), out var known)) return known.Name;
        _alphas[(fill, stroke)] = known = ("/G" + (_alphas.Count + 1).ToString(CultureInfo.InvariantCulture), PdfParts.Indirect(document, ("/ca", new PdfReal(fill)), ("/CA", new PdfReal(stroke))));
        return known.Name;
    }

    /// <summary>Writes the subset faces and one resource dictionary for all pages.</summary>
    public PdfDictionary Finish()
    {
        var resources = PdfParts.Indirect(document);
        Add("/Font", _fonts.Values.Select(f => (f.Name, (PdfObject)f.Object)));
        Add("/XObject", _images.Values.Select(i => (i.Name, (PdfObject)i.Object)));
        Add("/ExtGState", _alphas.Values.Select(a => (a.Name, (PdfObject)a.Object)));
        foreach (var (font, (_, target, glyphs)) in _fonts) PdfFontWriter.Write(document, target, font, new SortedDictionary<ushort, string>(glyphs));
        return resources;

        void Add(string key, IEnumerable<(string Name, PdfObject Object)> entries)
        {
            var dictionary = new PdfDictionary(document);
            foreach (var (name, value) in entries) dictionary.Elements[name] = value.Reference;
            if (dictionary.Elements.Count > 0) resources.Elements[key] = dictionary;
        }
    }
}
