using System.Collections;
using System.Globalization;
using System.Text;
using Batch.Flight.Fleet;

namespace Batch.Books.Tests.Support;

/// <summary>Writes everything an object holds as text, so that two can be compared to the last member.</summary>
internal static class Dump
{
    private static readonly string[] OriginFields = ["Aircraft", "FuelAboard", "OffBlocks", "Weight", "Type", "Ident", "Date", "Name", "Latitude", "Arm"];

    public static string Of(object? value)
    {
        var text = new StringBuilder();
        Write(text, value, "");
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value, string path)
    {
        switch (value)
        {
            case null:
                text.Append(path).Append(" = null\n");
                return;
            case Origin origin:
                text.Append(path).Append(" = ").AppendJoin(' ', OriginFields.Select(origin.Cell)).Append('\n');
                return;
            case string or bool or int or double or Enum or Instant or LocalDate or LocalTime or LocalDateTime or Duration or DateTimeZone:
                text.Append(path).Append(" = ").Append(string.Format(CultureInfo.InvariantCulture, "{0}", value)).Append('\n');
                return;
            case Flight.Week.LegSelection selection:
                text.Append(path).Append(" = ").AppendJoin(' ', Enumerable.Range(1, 9).Where(selection.Contains)).Append('\n');
                return;
            case PerformanceTable table:
                text.Append(path).Append(" = ").Append(table.Name).Append(": ").AppendJoin(", ", table.AxisNames).Append(" / ")
                    .AppendJoin(", ", table.ValueNames).Append('\n');
                for (var axis = 0; axis < table.AxisNames.Length; axis++)
                    Write(text, table.Keys(axis), path + ".Keys" + axis.ToString(CultureInfo.InvariantCulture));
                return;
            case IEnumerable many:
                var index = 0;
                foreach (var item in many) Write(text, item, $"{path}[{index++.ToString(CultureInfo.InvariantCulture)}]");
                return;
        }

        foreach (var property in value.GetType().GetProperties()
            .Where(property => property.GetIndexParameters().Length == 0 && property.Name != "Sha256" && !property.GetAccessors()[0].IsStatic))
        {
            if (value.GetType().IsValueType
                && property.Name is not ("Value" or "Key" or "LatitudeDeg" or "LongitudeDeg" or "Weight" or "Arm" or "Fuel" or "Moment" or "Trip" or "Number"))
                continue;
            Write(text, property.GetValue(value), path + "." + property.Name);
        }
    }
}
