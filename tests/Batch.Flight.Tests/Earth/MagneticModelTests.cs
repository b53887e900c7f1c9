using Batch.Flight.Earth;
using Batch.Testing;

namespace Batch.Flight.Tests.Earth;

public sealed class MagneticModelTests
{
    private static readonly CheckFile Values = CheckFile.Read("magnetic-test-values.csv");
    private static readonly CheckFile Report = CheckFile.Read("magnetic-report-table.csv");
    private static readonly CheckFile Places = CheckFile.Read("magnetic-crosscheck.csv");

    public static IEnumerable<object[]> ValueIds => Values.Ids();

    public static IEnumerable<object[]> ReportIds => Report.Ids();

    public static IEnumerable<object[]> PlaceIds => Places.Ids();

    [Theory]
    [MemberData(nameof(ValueIds))]
    public void A_published_test_value_comes_out_to_the_printed_digit(string id)
    {
        var (row, field) = (Values[id], FieldOf(Values[id]));
        AssertPrinted(row, "decl_highprec_deg", field.DeclinationDeg);
        AssertAll(row, field);
    }

    [Theory]
    [MemberData(nameof(ReportIds))]
    public void A_value_of_the_report_comes_out_to_the_printed_digit(string id) => AssertAll(Report[id], FieldOf(Report[id]));

    [Theory]
    [MemberData(nameof(PlaceIds))]
    public void A_place_has_the_declination_of_the_independent_evaluation(string id)
    {
        var (row, field) = (Places[id], FieldOf(Places[id]));
        AssertPrinted(row, "decl_deg", field.DeclinationDeg);
        AssertPrinted(row, "incl_deg", field.InclinationDeg);
        AssertPrinted(row, "H_nT", field.HorizontalNt);
        AssertPrinted(row, "F_nT", field.TotalNt);
    }

    [Fact]
    public void The_rates_are_what_a_year_brings()
    {
        var place = GeoPoint.Of(47, 8);
        var (now, then) = (MagneticModel.FieldAt(place, 3, 2026.4995), MagneticModel.FieldAt(place, 3, 2026.5005));
        var middle = MagneticModel.FieldAt(place, 3, 2026.5);
        Assert.Equal((then.DeclinationDeg - now.DeclinationDeg) * 1000, middle.DeclinationRateDegPerYear, 1e-6);
        Assert.Equal((then.InclinationDeg - now.InclinationDeg) * 1000, middle.InclinationRateDegPerYear, 1e-6);
        Assert.Equal((then.TotalNt - now.TotalNt) * 1000, middle.TotalRateNtPerYear, 1e-3);
    }

    [Theory]
    [InlineData(90)]
    [InlineData(-90)]
    public void At_a_pole_the_field_is_the_limit_along_the_meridian(double latDeg)
    {
        foreach (var lonDeg in new[] { -120.0, 0, 33, 180 })
        {
            var at = MagneticModel.FieldAt(GeoPoint.Of(latDeg, lonDeg), 0, 2026);
            var near = MagneticModel.FieldAt(GeoPoint.Of(latDeg * (1 - 1e-9), lonDeg), 0, 2026);
            Assert.Equal(near.NorthNt, at.NorthNt, 0.01);
            Assert.Equal(near.EastNt, at.EastNt, 0.01);
            Assert.Equal(near.DownNt, at.DownNt, 0.01);
        }
    }

    [Fact]
    public void Variation_is_the_declination_on_the_day_at_the_altitude()
    {
        var place = GeoPoint.Of(39.8617, -104.6732);
        var expected = MagneticModel.FieldAt(place, 10.668, 2029).DeclinationDeg;
        Assert.Equal(expected, MagneticModel.VariationDeg(place, new Feet(35000), new LocalDate(2029, 1, 1)), 1e-9);
        Assert.Equal(2028.5, MagneticModel.DecimalYear(new LocalDate(2028, 7, 2)), 1e-12);
    }

    [Fact]
    public void The_model_is_valid_from_2025_to_2030()
    {
        Assert.False(MagneticModel.IsValidOn(new LocalDate(2024, 12, 31)));
        Assert.True(MagneticModel.IsValidOn(new LocalDate(2025, 1, 1)));
        Assert.True(MagneticModel.IsValidOn(new LocalDate(2029, 12, 31)));
        Assert.False(MagneticModel.IsValidOn(new LocalDate(2030, 1, 2)));
    }

    private static MagneticField FieldOf(CheckRow row) =>
        MagneticModel.FieldAt(GeoPoint.Of(row.Number("lat"), row.Number("lon")), row.Number("height_km"), row.Number("decimal_year"));

    private static void AssertAll(CheckRow row, MagneticField field)
    {
        AssertPrinted(row, "decl_deg", field.DeclinationDeg);
        AssertPrinted(row, "incl_deg", field.InclinationDeg);
        AssertPrinted(row, "X_nT", field.NorthNt);
        AssertPrinted(row, "Y_nT", field.EastNt);
        AssertPrinted(row, "Z_nT", field.DownNt);
        AssertPrinted(row, "H_nT", field.HorizontalNt);
        AssertPrinted(row, "F_nT", field.TotalNt);
        AssertPrinted(row, "dX", field.NorthRateNtPerYear);
        AssertPrinted(row, "dY", field.EastRateNtPerYear);
        AssertPrinted(row, "dZ", field.DownRateNtPerYear);
        AssertPrinted(row, "dH", field.HorizontalRateNtPerYear);
        AssertPrinted(row, "dF", field.TotalRateNtPerYear);
        AssertPrinted(row, "dDecl_deg_yr", field.DeclinationRateDegPerYear);
        AssertPrinted(row, "dIncl_deg_yr", field.InclinationRateDegPerYear);
    }

    // The published north component carries a numerical noise of up to 0.0005 nT; its east and down components agree to 0.000002 nT.
    private static double Smallest(string column) => column.Contains("deg", StringComparison.Ordinal) ? 2e-6 : 0.001;

    private static void AssertPrinted(CheckRow row, string column, double actual) =>
        Assert.True(
            Math.Abs(row.Number(column) - actual) <= Math.Max(row.HalfDigit(column), Smallest(column)),
            FormattableString.Invariant($"{row.Id} {column}: {row[column]} expected, {actual:R} found"));
}
