namespace Batch.SampleMaker;

/// <summary>The README beside the sample books.</summary>
public static class SampleReadMe
{
    private const string Text = """
        # Sample books

        Everything here is invented: land, airports, airways, aircraft types and their figures, weather, operator, people. **Not for navigation.**

        | file | what |
        |---|---|
        | `operator.xlsx` | the operator book of Harrow Sound Air Charter: three types with full performance tables, six aircraft, nineteen airports, airways, shorelines, nine pilots |
        | `week.xlsx` | the week book of 7 to 13 December 2026: trips, passengers, cargo, winds, bulletins, notices |
        | `csv/operator/`, `csv/week/` | the same sheets as csv, the same rows and columns at the same places |
        | `expected-failures.csv` | the legs that fail on purpose, the check that must find each, and why; every other leg passes or has cautions only |

        The main island, Vellmere, lies in mid-ocean around 41 N 39 W and has hills up to 6,000 ft; Kelda, Wester Rill, Ostrane, Quill and Roan lie around it. There are three time zones, one of them
        off by half an hour. Some strips are grass or gravel, some have no lights, some no fuel, one has quiet hours, one lies at 4,000 ft.

        The performance tables come from a drag polar and simple engine formulas in `tests/Batch.SampleMaker`, not from any manual. All files are written by

        ```
        dotnet run --project tests/Batch.SampleMaker -- input-samples
        ```

        which gives the same bytes each time. Change the generator, not the files. A random week of any size, with a fleet and crews to fly it, for measurements:

        ```
        dotnet run --project tests/Batch.SampleMaker -- big --legs 1000 --seed 7 out/big
        ```

        """;

    public static void Write(string path) => File.WriteAllText(path, Text.ReplaceLineEndings("\n"));
}
