using System.Collections;
using System.Globalization;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Batch.Sheets.Templates;

/// <summary>One rendering: strict names, escaped output, bounded.</summary>
internal sealed class SheetContext : TemplateContext
{
    private readonly Func<string, Template?> _parsed;
    private readonly TemplateFolder _templates;
    private readonly SheetModel _model;
    private readonly List<TemplateProblem>? _noted;
    private readonly List<TemplateProblem> _withoutWords = [];
    private readonly Dictionary<(ScriptObject, CultureInfo), OwnWords> _words = [];

    /// <param name="parsed">Gives the parsed partial of a name; null where there is none.</param>
    /// <param name="templates">The templates, for naming the nearest.</param>
    /// <param name="bounds">How much the rendering may take.</param>
    /// <param name="model">The values.</param>
    /// <param name="noted">Receives names that do not exist, which then count as nothing; null where the first one stops the rendering.</param>
    public SheetContext(Func<string, Template?> parsed, TemplateFolder templates, TemplateBounds bounds, SheetModel model, List<TemplateProblem>? noted = null)
        : base(TemplateFunctions.Make())
    {
        _parsed = parsed;
        _templates = templates;
        _model = model;
        _noted = noted;
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedFunctionAccess = false;
        EnableRelaxedIndexerAccess = false;
        LoopLimit = bounds.LoopSteps;
        RecursiveLimit = bounds.Depth;
        LimitToString = bounds.Output;
        OutputLimit = bounds.Output;
        OnStringLimit = ScriptLimitBehavior.Throw;
        OnOutputLimit = ScriptLimitBehavior.Throw;
        AutoIndent = false;
        TemplateLoader = new FolderLoader();
        TryGetVariable = Unknown;
        PushCulture(CultureInfo.InvariantCulture);
        Show(this, model);
    }

    /// <summary>Lets the values of a sheet be seen under their own names, before those shown so far.</summary>
    public static void Show(TemplateContext context, SheetModel sheet)
    {
        var values = new ScriptObject();
        foreach (var (name, member) in ViewMembers.Of(sheet.GetType()))
            values.SetValue(name, member.Read(sheet), readOnly: true);
        context.PushGlobal(values);
        context.PushGlobal(new ScriptObject());
    }

    /// <summary>Ends what <see cref="Show"/> began.</summary>
    public static void Hide(TemplateContext context)
    {
        context.PopGlobal();
        context.PopGlobal();
    }

    /// <summary>English sentences for which a template has no words.</summary>
    public IReadOnlyList<TemplateProblem> WithoutWords => _withoutWords;

    /// <summary>Whether the output is plain text: values are not escaped, and stand on one line.</summary>
    public bool IsText { get; init; }

    /// <inheritdoc/>
    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        if (textAsObject is null)
            return this;
        if (textAsObject is Picture picture)
            return Write(span, picture.Usual);
        if (textAsObject is Markup markup)
            return IsText && markup.IsPicture ? throw new ValueError(span, "A picture cannot stand in a text.") : Write(markup.Html);
        if (textAsObject is not string and IEnumerable)
            throw new ValueError(span, "This is a list; write its items in a `for` loop.");
        if (ViewMembers.Of(textAsObject.GetType()) is { Count: > 0 } parts && textAsObject is not IPrintable)
            throw new ValueError(span, "This is a group of values; write one of them: " + string.Join(
                ", ", parts.Keys.Order(StringComparer.Ordinal).Take(8)) + (parts.Count > 8 ? ", ..." : "."));
        var text = textAsObject switch
        {
            Figures.Quantity quantity => quantity.ToString(CurrentCulture),
            IPrintable value => value.ToString(),
            _ => ObjectToString(textAsObject)
        } ?? "";
        return Write(IsText ? OneLine(text) : Markup.Escaped(text));
    }

    /// <summary>A value of a book must not make a line of its own in a mail.</summary>
    private static string OneLine(string text) => string.Concat(text.Select(letter => char.IsControl(letter) || letter is '\u2028' or '\u2029' ? ' ' : letter));

    /// <summary>Nothing, an empty text and an empty list count as no.</summary>
    /// <param name="span">Where.</param>
    /// <param name="value">The value.</param>
    public override bool ToBool(SourceSpan span, object? value) => value is not ("" or ICollection { Count: 0 }) && base.ToBool(span, value);

    /// <inheritdoc/>
    protected override IObjectAccessor GetMemberAccessorImpl(object target) =>
        target is IScriptObject or IDictionary or ICollection ? base.GetMemberAccessorImpl(target) ?? ViewAccessor.Instance : ViewAccessor.Instance;

    /// <inheritdoc/>
    protected override Template CreateTemplate(string templatePath, ScriptNode? callerContext)
    {
        if (_parsed(templatePath) is not { } partial)
            throw new PartialBroken([MissingTemplate.At(_templates, templatePath, callerContext?.Span.FileName ?? "",
                (callerContext?.Span.Start.Line ?? -1) + 1, (callerContext?.Span.Start.Column ?? -1) + 1)]);
        if (partial.HasErrors)
            throw new PartialBroken([.. TemplateProblems.Of(partial)]);
        return partial;
    }

    /// <summary>Notes a name that does not exist and goes on with nothing in its place; false where the rendering is to stop.</summary>
    /// <param name="unknown">What is wrong with it.</param>
    public bool Notes(ValueError unknown)
    {
        _noted?.Add(TemplateProblems.Of(unknown));
        return _noted is not null;
    }

    /// <summary>Notes an English sentence for which a template has no words; the sheet goes on with it.</summary>
    /// <param name="sentence">Which, and where.</param>
    public void NotesWithoutWords(ValueError sentence) => _withoutWords.Add(TemplateProblems.Of(sentence));

    /// <summary>The words of a template, made ready once a sheet.</summary>
    /// <param name="words">The words.</param>
    public OwnWords WordsOf(ScriptObject words)
    {
        if (!_words.TryGetValue((words, CurrentCulture), out var ready))
            _words[(words, CurrentCulture)] = ready = new OwnWords(words, CurrentCulture);
        return ready;
    }

    private bool Unknown(TemplateContext context, SourceSpan span, ScriptVariable variable, out object? value)
    {
        var unknown = ValueError.Unknown(span, $"There is no value or function `{variable.Name}`", variable.Name,
            [.. ViewMembers.Of(_model.GetType()).Keys, .. BuiltinObject.Keys]);
        value = null;
        return Notes(unknown) ? true : throw unknown;
    }
}
