using Batch.Checks;
using Batch.Sheets.Pictures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>A state for people: a word, a shape and a class for the colour, so that it is never told by colour alone.</summary>
internal sealed record StateView : IPrintable
{
    [Value("The state in one word: Pass, Caution, Fail, Unplanned, Note, Not checked")]
    public required string Word { get; init; }

    [Value("The state as in run.json, for classes of the style sheet: pass, caution, fail, unplanned, note, not-checked")]
    public required string Code { get; init; }

    [Value("The shape of the state as a picture of text height")]
    public required Markup Mark { get; init; }

    public static StateView Of(LegState state) => state switch
    {
        LegState.Pass => Made("Pass", "pass"),
        LegState.Caution => Made("Caution", "caution"),
        LegState.Fail => Made("Fail", "fail"),
        LegState.Unplanned => Made("Unplanned", "unplanned"),
    };

    public static StateView Of(Verdict verdict) => verdict switch
    {
        Verdict.Pass => Made("Pass", "pass"),
        Verdict.NotApplicable => Made("Does not apply", "not-applicable"),
        Verdict.NotChecked => Made("Not checked", "not-checked"),
        Verdict.Note => Made("Note", "note"),
        Verdict.Caution => Made("Caution", "caution"),
        Verdict.Fail => Made("Fail", "fail"),
    };

    public static StateView Of(State state) => state switch
    {
        State.Note => Made("Note", "note"),
        State.Caution => Made("Caution", "caution"),
        State.Fail => Made("Fail", "fail"),
    };

    /// <summary>The state of a level option: a note means that it works.</summary>
    public static StateView OfOption(State state) => state == State.Note ? Of(LegState.Pass) : Of(state);

    public override string ToString() => Word;

    private static StateView Made(string word, string code) => new() { Word = word, Code = code, Mark = StateMark.Of(code, word) };
}
