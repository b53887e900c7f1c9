using Scriban.Functions;
using Scriban.Runtime;

namespace Batch.Sheets.Templates;

/// <summary>
/// The functions that a template has. The engine's functions for clocks, random values, regular expressions and evaluating text are left out: outputs follow
/// from the books alone.
/// </summary>
internal static class TemplateFunctions
{
    private static readonly string[] LeftOutOfMath = ["random", "uuid"];

    public static ScriptObject Make()
    {
        var functions = new ScriptObject();
        functions.Import(typeof(UnitFunctions));
        functions.SetValue("include", new MarkupInclude(), readOnly: true);
        functions.SetValue("array", new ArrayFunctions(), readOnly: true);
        functions.SetValue("string", new StringFunctions(), readOnly: true);
        var math = new MathFunctions();
        foreach (var name in LeftOutOfMath)
            math.Remove(name);
        functions.SetValue("math", math, readOnly: true);
        functions.SetValue("empty", "", readOnly: true);
        return functions;
    }
}
