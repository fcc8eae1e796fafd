using Slantwise.Engines.Planning.Space;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Halls;

/// <summary>How far around the middle of a mat somebody may come down in a task.</summary>
/// <param name="TaskId">The task.</param>
/// <param name="Name">Its name on the sheet.</param>
/// <param name="RadiusM">The radius of the falling circle, above 0, at most 10, rounded up to whole centimetres.</param>
/// <param name="Ground">What it is reckoned from.</param>
/// <param name="HeightH">The highest point of its levels' postures in statures; none where no level has one.</param>
public sealed record TaskFall(Guid TaskId, string Name, double RadiusM, FallGround Ground, double? HeightH)
{
    private const double MostM = 10;

    private static readonly Lazy<IReadOnlyDictionary<string, double>> Heights =
        new(() => PostureLibrary.All.ToDictionary(p => p.Key, p => Math.Min(1.5, PostureHeight.OfH(p)), StringComparer.Ordinal));

    /// <summary>The circle of one task: its highest posture's, or the clear space of its design where that is wider.</summary>
    /// <param name="task">The task as the sheet has it: the levels offered.</param>
    /// <param name="design">Its design; none for a task without one.</param>
    /// <param name="statureM">The stature to reckon with, above 0, at most 2.5.</param>
    /// <remarks>A posture higher than 1.5 statures, with somebody carried, counts as 1.5: who falls from there is no longer a rod.</remarks>
    public static TaskFall Of(SheetTask task, TaskDesign? design, double statureM)
    {
        var heights = task.Levels.Select(l => l.Posture).OfType<string>().Where(Heights.Value.ContainsKey).Select(k => Heights.Value[k]).ToList();
        double? highestH = heights.Count > 0 ? heights.Max() : null;
        var fallM = highestH is { } high ? FallingCircle.RadiusM(high, statureM, 0) : 0;
        var clearM = design is null ? 0 : (double)design.Space.SpaceM;
        var (radiusM, ground) = (fallM, clearM) switch
        {
            (0, 0) => (FallingCircle.RadiusM(1, statureM, 0), FallGround.Standing),
            var (fall, clear) when clear > fall => (clear, FallGround.ClearSpace),
            _ => (fallM, FallGround.Posture),
        };
        return new(task.TaskId, task.Name, Math.Min(MostM, Math.Ceiling(Math.Round(radiusM * 100, 6)) / 100), ground, highestH);
    }

    /// <summary>The circles of a sheet's tasks, in its order.</summary>
    /// <param name="store">Where a school's own designs are.</param>
    /// <param name="schoolId">The school.</param>
    /// <param name="sheet">What is done; none where no sheet is chosen.</param>
    /// <param name="statureM">The stature to reckon with, above 0, at most 2.5.</param>
    /// <param name="cancel">Stops the loading.</param>
    public static async Task<IReadOnlyList<TaskFall>> ListAsync(IStore store, Guid schoolId, SheetContent? sheet, double statureM, CancellationToken cancel = default)
    {
        if (sheet is null) return [];
        var own = (await store.ListTaskDesignsAsync(schoolId, cancel)).ToDictionary(d => d.TaskId, d => d.Design);
        return [.. sheet.Tasks.Select(t => Of(t, own.GetValueOrDefault(t.TaskId) ?? TaskLibrary.Find(t.TaskId), statureM))];
    }
}
