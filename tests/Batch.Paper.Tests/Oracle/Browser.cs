using System.Globalization;
using Batch.Testing;

namespace Batch.Paper.Tests.Oracle;

/// <summary>Chromium on a document of the repository, with the faces that the printer has built in.</summary>
internal static class Browser
{
    public static string? Program => ExternalTool.Find("chromium", "chromium-browser", "google-chrome");

    /// <summary>A document by its path below `tests`, without running titles, which browsers do not have.</summary>
    public static string Document(string name) => File.ReadAllText(RepositoryRoot.PathOf(["tests", .. name.Split('/')]))
        .Replace("string(section)", "none", StringComparison.Ordinal);

    /// <summary>Opens a document with more rules than it has; gives what the browser says.</summary>
    public static string Run(string program, string folder, string html, string rules, params string[] arguments)
    {
        var page = Path.Combine(folder, "page.html");
        rules = Faces() + "html{font-family:'IBM Plex Sans','DejaVu Sans';font-variant-ligatures:none}" + rules;
        File.WriteAllText(page, html.Replace("</head>", "<style>" + rules + "</style></head>",
            StringComparison.Ordinal).Replace("\"IBM Plex Sans\", sans-serif", "'IBM Plex Sans','DejaVu Sans'", StringComparison.Ordinal));
        return Opened(program, folder, page, arguments);
    }

    /// <summary>Opens a document as it is, without any face beside those it holds.</summary>
    public static string Bare(string program, string folder, string html, params string[] arguments)
    {
        var page = Path.Combine(folder, "page.html");
        File.WriteAllText(page, html);
        return Opened(program, folder, page, arguments);
    }

    private static string Opened(string program, string folder, string page, string[] arguments) =>
        ExternalTool.Run(program, ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
            "--disable-component-update", "--disable-sync",
            "--allow-file-access-from-files", "--user-data-dir=" + Path.Combine(folder, "profile"), .. arguments, page]).Output;

    private static string Faces()
    {
        (string File, string Family, int Weight, string Style)[] faces =
        [
            ("IBMPlexSans-Regular", "IBM Plex Sans", 400, "normal"), ("IBMPlexSans-Italic", "IBM Plex Sans", 400, "italic"),
            ("IBMPlexSans-SemiBold", "IBM Plex Sans", 600, "normal"),
            ("IBMPlexSans-Bold", "IBM Plex Sans", 700, "normal"), ("IBMPlexSans-BoldItalic", "IBM Plex Sans", 700, "italic"),
            ("DejaVuSans", "DejaVu Sans", 400, "normal"), ("DejaVuSans-Bold", "DejaVu Sans", 700, "normal"),
        ];
        return string.Concat(faces.Select(f => "@font-face{font-family:'" + f.Family + "';src:url('"
            + new Uri(RepositoryRoot.PathOf("src", "Batch.Paper", "Fonts", f.File + ".ttf")).AbsoluteUri
            + "');font-weight:" + f.Weight.ToString(CultureInfo.InvariantCulture) + ";font-style:" + f.Style + "}"));
    }
}
