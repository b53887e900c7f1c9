namespace Batch.Sheets.Templates;

/// <summary>A value with parts that can also be written as it is; its text is that of <see cref="object.ToString"/>.</summary>
internal interface IPrintable;
