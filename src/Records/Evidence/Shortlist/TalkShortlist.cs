using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence.Shortlist;

/// <summary>The few talks of tomorrow's lesson: safety first, then those of whom little is known and who were not visited for longest.</summary>
/// <remarks>
/// Which pupils are on it hangs on safety, on how many tries are written and on talks noted, and on nothing that was reached or missed. Everybody can come up,
/// a pupil whose sheets raise no question too, and a class without a noted talk still takes turns. Our own working rule, not a finding.
/// </remarks>
public static class TalkShortlist
{
    /// <summary>
    /// As many as a teacher can have beside everything else: about half a minute each, with the way there a minute, in some 20 minutes of practice of which
    /// most belongs to the whole class. Common practice, no source.
    /// </summary>
    public const int MostTalks = 6;

    /// <summary>The short list.</summary>
    /// <param name="conferences">The long list; a pupil's first one is the one meant, one about safety before others.</param>
    /// <param name="pupils">Every pupil of the class by label, with the entries and talks of all lessons looked at.</param>
    /// <param name="lessons">These lessons, earliest first.</param>
    /// <returns>At most <see cref="MostTalks"/>, one a pupil; empty without a lesson.</returns>
    public static IReadOnlyList<ShortlistedTalk> Of(
        IReadOnlyList<Conference> conferences, IReadOnlyList<PupilEvidence> pupils, IReadOnlyList<UnitLesson> lessons)
    {
        if (lessons.Count == 0) return [];
        var numbers = lessons.ToDictionary(l => l.LessonId, l => l.LessonNumber);
        var latest = lessons[^1];
        var asked = conferences.ToLookup(c => c.PupilId);
        // Where all else is equal the class takes turns: each lesson begins where the last one's list would have ended.
        var start = pupils.Count == 0 ? 0 : (lessons.Count - 1) * MostTalks % pupils.Count;
        return pupils
            .Select((pupil, i) => (Turn: (i - start + pupils.Count) % pupils.Count, Talk: TalkOf(pupil), IsSettled: IsSafetySettled(pupil, latest.LessonId)))
            .OrderByDescending(x => x.Talk.Conference.IsSafety && !x.IsSettled)
            // More tries than a share needs to be read do not make a pupil better known.
            .ThenBy(x => Math.Min(x.Talk.TrialCount, SuccessShare.EnoughTrialCount))
            .ThenByDescending(x => x.Talk.LessonsSinceTalk ?? int.MaxValue)
            .ThenBy(x => x.Turn)
            .Select(x => x.Talk)
            .Take(MostTalks)
            .ToList();

        ShortlistedTalk TalkOf(PupilEvidence pupil)
        {
            var tries = pupil.Tasks.Sum(t => t.Sets.Sum(s => s.Trials.Count));
            var visited = pupil.Visits.Where(v => numbers.ContainsKey(v.LessonId)).Select(v => (int?)numbers[v.LessonId]).Max();
            var since = latest.LessonNumber - visited;
            var talk = asked[pupil.PupilId].OrderByDescending(c => c.IsSafety).FirstOrDefault() ?? Visit(pupil, tries, since);
            return new(talk, tries, since, lessons.Count);
        }
    }

    /// <summary>Talks about safety that the short list has no room for.</summary>
    /// <param name="conferences">The long list.</param>
    /// <param name="shortlist">The short list made of it.</param>
    public static int SafetyLeftCount(IReadOnlyList<Conference> conferences, IReadOnlyList<ShortlistedTalk> shortlist) =>
        conferences.Where(c => c.IsSafety).Select(c => c.PupilId).Distinct().Count(id => shortlist.All(t => t.Conference.PupilId != id || !t.Conference.IsSafety));

    private static bool IsSafetySettled(PupilEvidence pupil, Guid lessonId) =>
        pupil.Visits.Any(v => v.Topic == VisitTopic.Safety && v.LessonId == lessonId);

    private static Conference Visit(PupilEvidence pupil, int tries, int? since)
    {
        var isUnknown = tries < SuccessShare.EnoughTrialCount;
        var name = isUnknown ? "FewTries" : since is null ? "NoTalkYet" : "TalkBefore";
        return new()
        {
            PupilId = pupil.PupilId,
            Label = pupil.Label,
            Topic = VisitTopic.Decision,
            ReasonKey = "Reason" + name,
            ReasonArguments = isUnknown ? [tries] : since is { } lessons ? [lessons] : [],
            QuestionKey = "Question" + name,
            EntryIds = isUnknown ? pupil.Tasks.SelectMany(t => t.Sets.SelectMany(s => s.EntryIds)).ToList() : pupil.Visits.Select(v => v.EntryId).ToList(),
        };
    }
}
