using System.Text;

namespace Batch.Cli.Pipeline;

/// <summary>The board of an earlier run, kept while books and templates are watched and the template of the board is broken.</summary>
internal static class LastBoard
{
    private const string Remark = "<p id=\"last-good\" role=\"alert\" style=\"margin:0 0 10px;padding:8px 12px;background:#b3261e;color:#ffffff;font-weight:600\">This is the last good board. Its template is broken since, so it does not show what was changed after it; findings.csv does.</p>";

    /// <summary>The board with a line at its top that says what it is; said once, however often it is kept.</summary>
    /// <param name="board">The page as written.</param>
    public static byte[] Of(byte[] board)
    {
        var page = Encoding.UTF8.GetString(board);
        var body = page.IndexOf("<body", StringComparison.OrdinalIgnoreCase);
        var end = body < 0 ? -1 : page.IndexOf('>', body);
        return end < 0 || page.Contains(Remark, StringComparison.Ordinal) ? board : Encoding.UTF8.GetBytes(page.Insert(end + 1, Remark));
    }
}
