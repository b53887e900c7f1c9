using System.Reflection;
using Scriban;
using Scriban.Runtime;

namespace Batch.Sheets.Templates;

/// <summary>The functions of the house, read from their declarations.</summary>
internal static class FunctionCatalogue
{
    public static ImmutableArray<TemplateFunction> All { get; } =
    [
        .. typeof(UnitFunctions).GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
            .Select(method => new TemplateFunction(
                StandardMemberRenamer.Rename(method),
                method.GetCustomAttribute<FunctionTextAttribute>()?.Text ?? "",
                string.Join(", ",
                    method.GetParameters().Where(parameter => parameter.ParameterType != typeof(TemplateContext)).Skip(1).Select(parameter => parameter.Name))))
            .OrderBy(function => function.Name, StringComparer.Ordinal),
    ];
}
