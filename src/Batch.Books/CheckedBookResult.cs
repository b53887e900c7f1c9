namespace Batch.Books;

/// <summary>The checked workbooks of a run.</summary>
/// <param name="Files">The workbooks; the week book first.</param>
/// <param name="Notes">What could not be kept or marked, one sentence each, for the person at the terminal.</param>
public sealed record CheckedBookResult(ImmutableArray<CheckedBookFile> Files, ImmutableArray<string> Notes);
