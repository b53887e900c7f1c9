using Batch.SampleMaker.Books;
using Batch.SampleMaker.Land;

namespace Batch.SampleMaker.Network;

/// <summary>The airways; their minimum altitudes follow from the hills.</summary>
public static class AirwaySheet
{
    private static readonly ImmutableArray<(string Name, string Direction, ImmutableArray<string> Fixes)> Airways =
    [
        ("V12", "both", ["COR", "TIDES", "MELLO", "AND", "KORDA", "SENNA", "LUPIN", "BEL"]),
        ("V15", "both", ["COR", "RUDDY", "VESPA", "AND", "GALVO", "FEN", "HARLO", "BEL"]),
        ("V21", "both", ["COR", "HAWEL", "ELMIA", "PIRRO", "TARNO", "DUN", "IVORA", "BEL"]),
        ("V30", "both", ["KEL", "ELMIA", "BOSCA", "AND"]),
        ("V31", "both", ["DUN", "SENNA", "DELVE", "FEN"]),
        ("V34", "both", ["AND", "NORRA", "DUN"]),
        ("W5", "both", ["COR", "BRYNA", "TESSO", "MAR"]),
        ("W6", "both", ["MAR", "VINDA", "GRETO", "ROA"]),
        ("W7", "forward", ["KEL", "SORRA", "HILDA", "MISKA", "ROA"]),
        ("W8", "both", ["FEN", "OLMEN", "DRAYA", "OST"]),
        ("W9", "both", ["AND", "CALDO", "MERIN", "OST"]),
        ("W11", "both", ["BEL", "ARDEN", "NEVRA", "QUI"]),
        ("W14", "both", ["DUN", "CORVA", "WENDA", "QUI"]),
    ];

    public static SheetTable Sheet() => SheetTable.Of(
        "Airways",
        [new("Airway", 9), new("Sequence", 10, CellFormat.Whole), new("Fix", 9), new("Minimum altitude [ft]", 12, CellFormat.Whole), new("Direction", 11)],
        Airways.SelectMany(airway => airway.Fixes.Select((fix, index) => new object?[]
        {
            airway.Name, (index + 1) * 10, fix,
            index + 1 < airway.Fixes.Length ? Terrain.MinimumAltitudeFt(Waypoints.Of(fix).Spot, Waypoints.Of(airway.Fixes[index + 1]).Spot) : null,
            index + 1 < airway.Fixes.Length ? airway.Direction : null,
        })));
}
