using AngleSharp.Css;
using AngleSharp.Css.Dom;

namespace Batch.Paper.Style;

/// <summary>One selector with its declarations; rules are compared by origin, specificity and order.</summary>
internal sealed record StyleRule(ISelector Selector, Priority Specificity, bool UserAgent, int Order, ImmutableArray<Declaration> Declarations)
{
    /// <summary>True when the selector asks for nothing but names, ids and classes of an element and those around it: elements on the same path then have the same answer.</summary>
    public required bool ByPath { get; init; }
}
