using System.Globalization;
using Batch.Checks;

namespace Batch.Cli.Commands;

/// <summary>
/// A week under scenarios as text: for each what breaks that did not before, the farthest beyond its limit first, new cautions, then the thinnest margins that
/// are left.
/// </summary>
internal sealed class StressText(Terminal terminal)
{
    /// <summary>Writes the whole answer.</summary>
    /// <param name="before">The week as planned.</param>
    /// <param name="answers">What every scenario does to it.</param>
    public void Write(CheckedWeek before, ImmutableArray<StressAnswer> answers)
    {
        Line("As planned: " + WeekText.CountsOf(before));
        foreach (var answer in answers) Write(answer);
    }

    private void Write(StressAnswer answer)
    {
        Line("");
        Line($"{answer.Scenario.Name}: {answer.Scenario.Text}");
        Line(answer.Breaks.Length switch
        {
            0 => "  No leg fails a check that it meets as planned.",
            1 => "  1 leg fails a check that it meets as planned:",
            _ => string.Create(CultureInfo.InvariantCulture, $"  {answer.Breaks.Length} legs fail a check that they meet as planned, worst first:"),
        });
        foreach (var leg in answer.Breaks) Leg(leg);
        if (!answer.Cautions.IsEmpty) Line("  New cautions:");
        foreach (var leg in answer.Cautions) Leg(leg);
        if (!answer.Thinnest.IsEmpty) Line("  Thinnest margins of the legs that pass:");
        foreach (var margin in answer.Thinnest)
            Line(string.Create(CultureInfo.InvariantCulture,
                $"    {margin.Plan.Key}  {margin.Finding.Check}  {100 * margin.Share:0.0} %  {margin.Finding.Text}"));
        Line("  " + WeekText.CountsOf(answer.Week));
    }

    private void Leg(StressedLeg leg)
    {
        Line($"    {leg.Plan.Key}  {WeekText.What(leg.Plan)}");
        foreach (var finding in leg.Findings) Line($"        {finding.Check}  {finding.Text}");
    }

    private void Line(string text) => terminal.Output.WriteLine(text);
}
