using System.Globalization;
using System.Text.Json;
using Slantwise.Records.Entries;
using Slantwise.Records.Simulation;

namespace Slantwise.Records.Tests.Simulation;

public sealed class SimulationFilesTests
{
    private static readonly SimulatedClass Simulated = ClassSimulator.Run(SimulationPlans.Unit(pupils: 12));
    private static readonly IReadOnlyDictionary<string, string> Files = SimulationFiles.Of(Simulated);

    [Fact]
    public void Of_AClass_GivesSixFiles() => Assert.Equal(
        ["entries.jsonl", "levels.csv", "predictions.csv", "pupils.csv", "trials.csv", "truth.csv"], Files.Keys);

    [Fact]
    public void Of_Entries_OneALine()
    {
        var lines = Files["entries.jsonl"].Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Simulated.Entries.Count, lines.Length);
        Assert.Equal(Simulated.Entries.Select(e => e.Id.ToString()), lines.Select(l => JsonDocument.Parse(l).RootElement.GetProperty("id").GetString()));
        Assert.All(lines, l => Assert.True(JsonDocument.Parse(l).RootElement.GetProperty("fact").TryGetProperty("kind", out _)));
    }

    [Fact]
    public void Of_Trials_CountWhatStandsAfterCorrections()
    {
        var rows = Rows("trials.csv");
        Assert.Equal(["pupil", "level", "task", "dose", "lesson", "set", "trial", "success", "held_s", "predicted_count", "predicted_hold_s"], rows[0]);
        var current = Simulated.Entries.GroupBy(e => e.LessonId).SelectMany(EntryLog.Current).ToList();
        Assert.Equal(current.Count(e => e.Fact is Trial), rows.Count - 1);
        Assert.Equal(current.Count(e => e.Fact is Trial { IsSuccess: true }), rows.Skip(1).Count(r => r[7] == "1"));
        Assert.Equal(
            current.Select(e => e.Fact).OfType<Trial>().Sum(t => t.HeldS ?? 0),
            rows.Skip(1).Where(r => r[8] != "").Sum(r => double.Parse(r[8], CultureInfo.InvariantCulture)), 1e-6);
    }

    [Fact]
    public void Of_Predictions_CountOnceASet()
    {
        var current = Simulated.Entries.GroupBy(e => e.LessonId).SelectMany(EntryLog.Current).ToList();
        Assert.Equal(current.Count(e => e.Fact is Prediction), Rows("predictions.csv").Count - 1);
    }

    [Fact]
    public void Of_Truth_HoldsEveryPupilLevelAndCue()
    {
        var rows = Rows("truth.csv");
        Assert.Equal(12, rows.Count(r => r[0] == "pupil" && r[2] == "bias"));
        Assert.Equal(30, rows.Count(r => r[0] == "level" && r[2] == "difficulty"));
        Assert.Equal(24, rows.Count(r => r[0] == "cue"));
        Assert.Equal(
            Simulated.Truth.Levels.Select(l => l.DifficultyLogits),
            rows.Where(r => r is ["level", _, "difficulty", _]).Select(r => double.Parse(r[3], CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Of_NamesWithCommas_AreQuoted() =>
        Assert.Contains("\"Free foot lifted, arms out wide\"", Files["levels.csv"]);

    // None of these files has a comma or a line break inside a cell.
    private static List<string[]> Rows(string file) =>
        Files[file].Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(',')).ToList();
}
