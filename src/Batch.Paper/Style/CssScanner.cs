using System.Text;

namespace Batch.Paper.Style;

/// <summary>Splits CSS text into blocks and declarations and keeps offsets, which the AngleSharp parser does not (CSS Syntax 3, simplified).</summary>
internal static class CssScanner
{
    /// <summary>Comments become blanks of the same length, so offsets stay true.</summary>
    public static string WithoutComments(string css)
    {
        var text = new StringBuilder(css);
        for (var i = css.IndexOf("/*", StringComparison.Ordinal); i >= 0;)
        {
            var end = css.IndexOf("*/", i + 2, StringComparison.Ordinal);
            end = end < 0 ? css.Length : end + 2;
            for (var k = i; k < end; k++)
            {
                if (text[k] != '\n') text[k] = ' ';
            }

            i = end >= css.Length ? -1 : css.IndexOf("/*", end, StringComparison.Ordinal);
        }

        return text.ToString();
    }

    /// <summary>The statements of a block: prelude and body, or a declaration when there is no body.</summary>
    public static IEnumerable<CssStatement> Statements(string css, int from, int to)
    {
        while (from < to)
        {
            while (from < to && (char.IsWhiteSpace(css[from]) || css[from] is ';' or '}')) from++;
            if (from >= to) yield break;
            var stop = Find(css, from, to, ";{}");
            var prelude = css[from..stop].TrimEnd();
            if (stop < to && css[stop] == '{')
            {
                var close = Close(css, stop + 1, to);
                yield return new CssStatement(prelude, from, stop + 1, close);
                from = close + 1;
            }
            else
            {
                yield return new CssStatement(prelude, from, -1, -1);
                from = stop + 1;
            }
        }
    }

    /// <summary>The `name: value` pairs directly inside a block.</summary>
    public static IEnumerable<Declaration> Declarations(string css, int from, int to, int baseOffset, string context)
    {
        foreach (var statement in Statements(css, from, to))
        {
            var colon = statement.Prelude.IndexOf(':', StringComparison.Ordinal);
            if (statement.HasBody || colon <= 0) continue;
            var name = statement.Prelude[..colon].Trim();
            if (!name.StartsWith("--", StringComparison.Ordinal)) name = name.ToLowerInvariant();
            var value = statement.Prelude[(colon + 1)..].Trim();
            var bang = value.LastIndexOf('!');
            var important = bang >= 0 && value[(bang + 1)..].Trim().Equals("important", StringComparison.OrdinalIgnoreCase);
            if (important) value = value[..bang].TrimEnd();
            yield return new Declaration(name, value, important, baseOffset < 0 ? -1 : baseOffset + statement.Start, context);
        }
    }

    /// <summary>Splits at a separator outside quotes and brackets; whitespace runs count as one separator.</summary>
    public static List<string> Split(string text, char separator)
    {
        var parts = new List<string>();
        for (var from = 0; from <= text.Length;)
        {
            var stop = Find(text, from, text.Length, separator == ' ' ? " \t\n" : separator.ToString());
            var part = text[from..stop].Trim();
            if (part.Length > 0 || separator != ' ') parts.Add(part);
            from = stop + 1;
        }

        return parts;
    }

    private static int Find(string css, int from, int to, string wanted)
    {
        var depth = 0;
        for (var i = from; i < to; i++)
        {
            var c = css[i];
            if (c is '"' or '\'')
            {
                var end = css.IndexOf(c, i + 1);
                i = end < 0 || end >= to ? to : end;
                continue;
            }

            if (depth == 0 && wanted.Contains(c, StringComparison.Ordinal)) return i;
            if (c is '(' or '[') depth++;
            if (c is ')' or ']') depth = Math.Max(0, depth - 1);
        }

        return to;
    }

    private static int Close(string css, int from, int to)
    {
        for (var depth = 1; from < to; from++)
        {
            from = Find(css, from, to, "{}");
            if (from >= to) return to;
            depth += css[from] == '{' ? 1 : -1;
            if (depth == 0) return from;
        }

        return to;
    }
}
