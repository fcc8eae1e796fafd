using Slantwise.Records.Entries;

namespace Slantwise.Records.Evidence;

/// <summary>How the teacher spoke about decisions: for the teacher's own eyes.</summary>
/// <param name="RemarkCount">Talks about a decision, n.</param>
/// <param name="NeutralCount">Of them, questions and descriptions.</param>
/// <param name="EntryIdsToReread">Of them, judgements and corrections: a value put on a choice takes the choice back.</param>
public sealed record LevelTalk(int RemarkCount, int NeutralCount, IReadOnlyList<Guid> EntryIdsToReread)
{
    /// <summary>The neutral share; none without a remark.</summary>
    public double? NeutralFraction => RemarkCount == 0 ? null : (double)NeutralCount / RemarkCount;

    /// <summary>The talk about decisions among some visits.</summary>
    /// <param name="visits">Any number, of any topic.</param>
    public static LevelTalk Of(IEnumerable<VisitEvidence> visits)
    {
        var remarks = visits.Where(v => v.Topic == VisitTopic.Decision).ToList();
        var loaded = remarks.Where(v => v.Form is VisitForm.Corrected or VisitForm.Valued).Select(v => v.EntryId).ToList();
        return new LevelTalk(remarks.Count, remarks.Count - loaded.Count, loaded);
    }
}
