using Slantwise.Records.Entries;

namespace Slantwise.Records.Floor.Bundles;

/// <summary>The entries a device is given.</summary>
internal static class BundleEntries
{
    /// <summary>Those about the bundle's pupils; for the teacher those about the lesson as well.</summary>
    /// <param name="entries">Every entry of the lesson, each id once.</param>
    /// <param name="kind">What the device is there for.</param>
    /// <param name="pupilIds">The bundle's pupils.</param>
    /// <returns>In the order given. Whatever is corrected by an entry that is not among them is left out too: it would seem to hold.</returns>
    public static IReadOnlyList<Entry> Of(IReadOnlyList<Entry> entries, FloorDeviceKind kind, IReadOnlySet<Guid> pupilIds)
    {
        if (kind is FloorDeviceKind.Board or FloorDeviceKind.Station) return [];
        var isTeacher = kind == FloorDeviceKind.Teacher;
        var hidden = entries.Where(e => !(isTeacher ? IsForTeacher(e, pupilIds) : IsForPupil(e, pupilIds))).Select(e => e.Id).ToHashSet();
        var correctors = entries.Where(e => e.SupersedesId is not null).ToLookup(e => e.SupersedesId!.Value, e => e.Id);
        var byId = entries.ToDictionary(e => e.Id);
        var waiting = new Stack<Guid>(hidden);
        while (waiting.TryPop(out var id))
        {
            if (byId[id].SupersedesId is { } before && byId.ContainsKey(before) && hidden.Add(before)) waiting.Push(before);
            // A withdrawal of what a device may not see says no more than that there was something.
            foreach (var corrector in correctors[id])
                if (byId[corrector].Fact is Withdrawal && hidden.Add(corrector)) waiting.Push(corrector);
        }
        return [.. entries.Where(e => !hidden.Contains(e.Id))];
    }

    private static bool IsForTeacher(Entry entry, IReadOnlySet<Guid> pupilIds) => entry.PupilId is not { } pupil || pupilIds.Contains(pupil);

    private static bool IsForPupil(Entry entry, IReadOnlySet<Guid> pupilIds) =>
        entry.PupilId is { } pupil && pupilIds.Contains(pupil) && entry.Fact is not (Visit or TeacherCheck or Note);
}
