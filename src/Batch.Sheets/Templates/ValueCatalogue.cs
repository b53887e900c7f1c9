using System.Collections;
using System.Reflection;
using Batch.Sheets.Figures;

namespace Batch.Sheets.Templates;

/// <summary>Walks the view types of a model and lists their values, taking examples from the model.</summary>
internal static class ValueCatalogue
{
    public static ImmutableArray<TemplateValue> Of(SheetModel model)
    {
        var found = ImmutableArray.CreateBuilder<TemplateValue>();
        Group(model.GetType(), "", [model], found);
        return found.ToImmutable();
    }

    /// <summary>The type of the items of a list, or the type itself without the question mark.</summary>
    private static Type Inner(Type type) => ListItem(type) ?? Nullable.GetUnderlyingType(type) ?? type;

    private static Type? ListItem(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>) ? type.GetGenericArguments()[0] : null;

    private static void Group(Type type, string path, IReadOnlyList<object> samples, ImmutableArray<TemplateValue>.Builder found)
    {
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (!ViewMembers.Of(type).Values.Any(member => member.Property == property))
                continue;
            var member = ViewMembers.Of(type).Values.First(candidate => candidate.Property == property);
            var isList = ListItem(property.PropertyType) is not null;
            var inner = Inner(property.PropertyType);
            var values = samples.Select(member.Read).OfType<object>().SelectMany(value => isList ? ((IEnumerable)value).Cast<object>() : [value]).ToArray();
            var isGroup = ViewMembers.Of(inner).Count > 0 && !IsFigure(inner) && !IsSheet(inner);
            var here = path + member.Name + (isList ? "[]" : "");
            found.Add(new TemplateValue(here, (isList ? "list of " : "") + TypeName(inner, values, isList), Unit(values), member.Text,
                IsSheet(inner) || (isGroup && !typeof(IPrintable).IsAssignableFrom(inner)) ? "" : Example(values)));
            if (isGroup)
                Group(inner, here + ".", values, found);
        }
    }

    /// <summary>The values of a whole sheet inside another are listed with that sheet.</summary>
    private static bool IsSheet(Type type) => typeof(SheetModel).IsAssignableFrom(type);

    private static bool IsFigure(Type type) => type == typeof(Quantity) || type == typeof(ClockTime) || type == typeof(Elapsed);

    private static string Example(object[] values) => values.FirstOrDefault() switch
    {
        null => "",
        Markup or Picture => "a picture",
        bool yes => yes ? "true" : "false",
        double number => number.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture),
        var value => value.ToString() ?? "",
    };

    private static string Unit(object[] values) =>
        values.OfType<Quantity>().FirstOrDefault() is { } quantity ? UnitOf(quantity) : values.OfType<Elapsed>().Any() ? "min" : "";

    private static string UnitOf(Quantity quantity) => quantity.Kind switch
    {
        QuantityKind.Weight or QuantityKind.Fuel => "lb",
        QuantityKind.Flow => "lb/h",
        QuantityKind.Distance => "NM",
        QuantityKind.Height => "ft",
        QuantityKind.Arm => "in",
        QuantityKind.Speed => "kt",
        QuantityKind.Temperature => "°C",
        QuantityKind.Angle => "deg",
        QuantityKind.Plain => quantity.PlainUnit,
    };

    private static string TypeName(Type type, object[] values, bool isList)
    {
        var many = isList ? "s" : "";
        if (type == typeof(Quantity))
            return (values.OfType<Quantity>().FirstOrDefault()?.Kind.ToString().ToLowerInvariant() ?? "quantity") + many;
        return type switch
        {
            _ when type == typeof(ClockTime) => "time of day" + many,
            _ when type == typeof(Elapsed) => "length of time" + many,
            _ when type == typeof(Markup) || type == typeof(Picture) => "picture" + many,
            _ when type == typeof(string) => "text" + many,
            _ when type == typeof(bool) => "yes or no",
            _ when type == typeof(int) => "whole number" + many,
            _ when type == typeof(double) => "number" + many,
            _ when IsSheet(type) => "sheet" + many,
            _ => "group" + many,
        };
    }
}
