using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence;

/// <summary>Puts the conferences of a class in order: by safety and by how little is known, never by how well anybody does.</summary>
internal static class ConferenceList
{
    private const int MostPerPupil = 2;

    public static IReadOnlyList<Conference> Of(
        IReadOnlyList<PupilEvidence> pupils, IReadOnlyList<TaskEvidence> tasks, IReadOnlyList<LessonReading> lessons)
    {
        if (lessons.LastOrDefault(l => l.Sets.Count > 0) is not { } recent) return [];
        return pupils
            .SelectMany(pupil => Chosen(ConferenceRules.Of(pupil, tasks, recent.LessonId)).Select(talk => (pupil, talk)))
            .OrderByDescending(x => x.talk.IsSafety)
            .ThenBy(x => x.pupil.SetCount)
            .ThenBy(x => x.pupil.Visits.Count == 0 ? DateTimeOffset.MinValue : x.pupil.Visits[^1].MadeAt)
            .ThenBy(x => x.pupil.Label, StringComparer.InvariantCultureIgnoreCase)
            .ThenBy(x => x.pupil.PupilId)
            .Select(x => x.talk)
            .ToList();
    }

    // The second talk is about something else where there is something else to talk about.
    private static IEnumerable<Conference> Chosen(IEnumerable<Conference> found)
    {
        var all = found.ToList();
        if (all.Count <= MostPerPupil) return all;
        return [all[0], all.Skip(1).FirstOrDefault(c => c.Topic != all[0].Topic) ?? all[1]];
    }
}
