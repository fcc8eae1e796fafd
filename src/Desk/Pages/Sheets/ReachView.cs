using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Drawing.Charts;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>The reach of one task as the page shows it.</summary>
/// <param name="Task">The task as it would be printed.</param>
/// <param name="Reading">The words.</param>
/// <param name="Chart">Pupils and levels on one line; none where there is no level or no pupil.</param>
/// <param name="Rows">The same as a table, pupils by label.</param>
/// <param name="Added">The level that would include most of those left out; none where there is none.</param>
public sealed record ReachView(SheetTask Task, ReachReading Reading, Scene? Chart, IReadOnlyList<ReachViewRow> Rows, Level? Added)
{
    private const double WidthMm = 84;

    // Half of the central 90 % of a normal distribution, in standard deviations.
    private const double Central90 = 1.645;

    /// <summary>The numbers behind it.</summary>
    public required TaskReach Reach { get; init; }

    /// <summary>The view of a reach.</summary>
    /// <param name="reach">The reach.</param>
    /// <param name="task">The task it was found for.</param>
    /// <param name="band">The band it was found for.</param>
    /// <param name="culture">The reader's language.</param>
    public static ReachView Of(TaskReach reach, SheetTask task, ReachBand band, CultureInfo culture)
    {
        var reading = ReachReading.Of(reach, task, band, culture);
        var rows = reach.Pupils.Select(p => new ReachViewRow(
            p.PupilId, p.Label, [.. p.Levels.Select(l => l is { } o ? Of(o) : ((int, int)?)null)], p.TrialCount, p.IsMostlyAssumed)).ToList();
        return new ReachView(task, reading, ChartOf(reach, task, band, reading), rows, reading.Added) { Reach = reach };
    }

    private static (int LowTenthsCount, int HighTenthsCount) Of(LevelOutlook level) =>
        DotsOfTen.TenthsOf(Chance(level.MeanLogits - Central90 * level.SdLogits), Chance(level.MeanLogits + Central90 * level.SdLogits));

    private static Scene? ChartOf(TaskReach reach, SheetTask task, ReachBand band, ReachReading reading)
    {
        if (reach.Pupils.Count == 0 || task.Levels.Count == 0) return null;
        var at = ReachPositions.Of(reach);
        var shown = Enumerable.Range(0, task.Levels.Count).Where(j => at.LevelsLogits[j] is not null).ToList();
        var lines = shown.Select(j => new ReachLine($"{j + 1}", at.LevelsLogits[j]!.Value)).ToList();
        // What is within reach begins where success would be as sure as the band's end, and ends where it would be as sure as its beginning.
        var rows = reach.Pupils.Select((p, i) => new ReachRow(
            p.Label,
            at.PupilsLogits[i] is { } pupil ? new ReachSpan(pupil - Logit(band.HighFraction), pupil - Logit(band.LowFraction)) : null,
            Central90 * at.SdsLogits[i],
            p.IsMostlyAssumed,
            [.. shown.Select((j, place) => (j, place)).Where(x => p.Levels[x.j] is null).Select(x => x.place)],
            DeskWords.Say("ReachNothingAllowed"))).ToList();
        var order = string.Join(", ", shown.OrderBy(j => at.LevelsLogits[j]).Select(j => $"{j + 1}"));
        return ReachChart.Of(
            lines, rows, WidthMm, new ScaleText(DeskWords.Say("ReachEasier"), "", DeskWords.Say("ReachHarder")),
            DeskWords.Say("ReachShows", task.Name, order, reading.Headline));
    }

    private static double Logit(double chance) => Math.Log(chance / (1 - chance));

    private static double Chance(double logit) => 1 / (1 + Math.Exp(-logit));
}
