using AngleSharp.Css;
using AngleSharp.Css.Dom;

namespace Batch.Paper.Style;

/// <summary>One selector with its declarations; rules are compared by origin, specificity and order.</summary>
internal sealed record StyleRule(ISelector Selector, Priority Specificity, bool UserAgent, int Order, ImmutableArray<Declaration> Declarations);
