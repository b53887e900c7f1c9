using Scriban;
using Scriban.Functions;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Batch.Sheets.Templates;

/// <summary>
/// The <c>include</c> of the template engine, its result marked as HTML: the values inside were escaped when they were written. A partial that is handed the
/// values of a whole sheet sees them under their own names.
/// </summary>
internal sealed class MarkupInclude : IScriptCustomFunction
{
    private readonly IncludeFunction _inner = new();

    public int RequiredParameterCount => _inner.RequiredParameterCount;

    public int ParameterCount => _inner.ParameterCount;

    public ScriptVarParamKind VarParamKind => _inner.VarParamKind;

    public Type ReturnType => typeof(Markup);

    public ScriptParameterInfo GetParameterInfo(int index) => _inner.GetParameterInfo(index);

    public int GetParameterIndexByName(string name) => _inner.GetParameterIndexByName(name);

    public object Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement)
    {
        ArgumentNullException.ThrowIfNull(callerContext);
        if (arguments.Count < 2 || arguments[1] is not SheetModel sheet)
            return new Markup(_inner.Invoke(context, callerContext, arguments, blockStatement)?.ToString() ?? "");
        SheetContext.Show(context, sheet);
        try
        {
            return new Markup(_inner.Invoke(context, callerContext, arguments, blockStatement)?.ToString() ?? "");
        }
        finally
        {
            SheetContext.Hide(context);
        }
    }

    public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        new(Invoke(context, callerContext, arguments, blockStatement));
}
