using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Crew sheet: one pilot a row.</summary>
internal static class CrewSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan = new("Crew", "operator", "Pilots: what they may fly and until when their checks hold.");

    private static readonly Column<string> Code =
        Plan.Add(ColumnKinds.Ident("Code", nameof(CrewMember.Code), "Short code by which the legs refer to the pilot.", ColumnKinds.Starred));
    private static readonly Column<string> Name = Plan.Add(ColumnKinds.Text("Name", nameof(CrewMember.Name), "Full name.", ColumnKinds.Starred));
    private static readonly Column<string> Mail = Plan.Add(ColumnKinds.Text("Mail", nameof(CrewMember.Mail), "Mail address.", false, "Email", "E-mail"));
    private static readonly Column<double> Weight =
        Plan.Add(ColumnKinds.AboveZero(Quantity.Weight, "Weight", nameof(CrewMember.Weight), "Weight with flight bag."));
    private static readonly Column<string> Base = Plan.Add(ColumnKinds.Ident("Base", nameof(CrewMember.Base), "Ident of the home base.", false, "Home base"));
    private static readonly Column<ImmutableArray<string>> Types =
        Plan.Add(ColumnKinds.List("Types", nameof(CrewMember.Types), "Types the pilot is qualified on, with commas."));
    private static readonly Column<(bool Captain, bool Second)> Seats = Plan.Add(ColumnKinds.Of("Seats", nameof(CrewMember.MayCommand),
        "Seats the pilot may take: captain, second pilot, or both with a comma.", false, ["Seat"], null, (cell, _) => SeatsOf(cell)));
    private static readonly Column<LocalDate> Medical = Until("Medical", nameof(CrewMember.MedicalUntil), "Last day of the medical certificate.");
    private static readonly Column<LocalDate> Competency = Until("Competency", nameof(CrewMember.CompetencyUntil), "Last day of the competency check.");
    private static readonly Column<LocalDate> Instrument =
        Until("Instrument check", nameof(CrewMember.InstrumentUntil), "Last day of the instrument proficiency check.", "Instrument", "Instrument until");
    private static readonly Column<LocalDate> Line = Until("Line check", nameof(CrewMember.LineCheckUntil), "Last day of the line check.", "Line");
    private static readonly Column<double> Hours = Plan.Add(ColumnKinds.Span(Quantity.Hours, "Hours", nameof(CrewMember.Hours), "Total flight hours."));
    private static readonly Column<double> HoursInType =
        Plan.Add(ColumnKinds.Span(Quantity.Hours, "Hours in type", nameof(CrewMember.HoursInType), "Flight hours in type."));
    private static readonly Column<string> Certificate = Plan.Add(ColumnKinds.Word(
        "Certificate",
        nameof(CrewMember.Certificate),
        "Best pilot certificate.",
        [("airline transport", "airline transport"), ("commercial", "commercial"), ("private", "private"), ("ATP", "airline transport"),
            ("ATPL", "airline transport"), ("CPL", "commercial"), ("PPL", "private")]));
    private static readonly Column<bool> InstrumentRating =
        Plan.Add(ColumnKinds.YesNo("Instrument rating", nameof(CrewMember.InstrumentRating), "Whether the pilot holds an instrument rating."));
    private static readonly Column<double> CrossCountryHours =
        Plan.Add(ColumnKinds.Span(Quantity.Hours, "Cross-country hours", nameof(CrewMember.CrossCountryHours), "Cross-country flight hours."));
    private static readonly Column<double> NightHours =
        Plan.Add(ColumnKinds.Span(Quantity.Hours, "Night hours", nameof(CrewMember.NightHours), "Night flight hours."));
    private static readonly Column<double> InstrumentHours =
        Plan.Add(ColumnKinds.Span(Quantity.Hours, "Instrument hours", nameof(CrewMember.InstrumentHours), "Instrument hours, actual and simulated."));
    private static readonly Column<int> RecentApproaches = Plan.Add(ColumnKinds.Whole("Approaches in 6 months", nameof(CrewMember.RecentApproaches),
        "Instrument approaches within the last six calendar months.", 0, 9999));
    private static readonly Column<LocalDate> ThirdLanding =
        Plan.Add(ColumnKinds.Date("Third last landing", nameof(CrewMember.ThirdLastLanding), "Date of the third last landing."));
    private static readonly Column<LocalDate> ThirdNightLanding =
        Plan.Add(ColumnKinds.Date("Third last night landing", nameof(CrewMember.ThirdLastNightLanding), "Date of the third last landing at night."));

    /// <summary>Reads the pilots.</summary>
    public static Register<CrewMember> Read(Shelf shelf, Register<AircraftType> types, Register<Airport> airports)
    {
        var crew = new Register<CrewMember>(Plan.Name);
        foreach (var row in shelf.Rows(Plan))
        {
            var code = row.NeededText(Code);
            crew.Take(code, Code, row, Pilot(row, code, types, airports));
        }

        return crew;
    }

    private static CrewMember? Pilot(Row row, string code, Register<AircraftType> types, Register<Airport> airports)
    {
        var seats = row.Optional(Seats);
        ImmutableArray<string> qualified = [.. (row.Optional(Types) ?? []).Select(type => types.Resolve(row, Types, type, State.Caution)?.Name ?? type)];
        var weight = row.Pounds(Weight);
        if (weight is { Value: var pounds }) Plausible.Adult(row, Weight, pounds);
        var pilot = new CrewMember
        {
            Code = code,
            Name = row.NeededText(Name),
            Mail = row.Text(Mail),
            Weight = weight,
            Base = row.Text(Base),
            Types = qualified,
            MayCommand = seats?.Captain,
            MayAssist = seats?.Second,
            MedicalUntil = row.Optional(Medical),
            CompetencyUntil = row.Optional(Competency),
            InstrumentUntil = row.Optional(Instrument),
            LineCheckUntil = row.Optional(Line),
            Hours = row.Optional(Hours),
            HoursInType = row.Optional(HoursInType),
            Certificate = row.Text(Certificate),
            InstrumentRating = row.Optional(InstrumentRating),
            CrossCountryHours = row.Optional(CrossCountryHours),
            NightHours = row.Optional(NightHours),
            InstrumentHours = row.Optional(InstrumentHours),
            RecentApproaches = row.Optional(RecentApproaches),
            ThirdLastLanding = row.Optional(ThirdLanding),
            ThirdLastNightLanding = row.Optional(ThirdNightLanding),
            Origin = row.Origin,
        };
        airports.Resolve(row, Base, pilot.Base, State.Caution);
        return row.IsLost ? null : pilot;
    }

    private static Reading<(bool Captain, bool Second)> SeatsOf(RawCell cell)
    {
        var (captain, second) = (false, false);
        foreach (var word in TextReading.List(cell).Value)
        {
            switch (HeaderText.Plain(word))
            {
                case "captain" or "pic" or "left":
                    captain = true;
                    break;
                case "secondpilot" or "second" or "copilot" or "sic" or "firstofficer" or "right":
                    second = true;
                    break;
                case "both":
                    (captain, second) = (true, true);
                    break;
                default:
                    return Reading<(bool, bool)>.Bad("holds a seat that is not known", "captain, second pilot, or both with a comma");
            }
        }

        return Reading<(bool, bool)>.Good((captain, second));
    }

    private static Column<LocalDate> Until(string name, string field, string meaning, params string[] aliases) =>
        Plan.Add(ColumnKinds.Date(name + " until", field, meaning, false, [name, .. aliases]));
}
