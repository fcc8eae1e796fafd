using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Groups;

/// <summary>Who of a class is grouped in a lesson.</summary>
/// <param name="Class">The class's pupils, as they are shown.</param>
/// <param name="Pupils">Who is grouped, in the same order.</param>
/// <param name="Absent">Who was noted as absent, grouped or not.</param>
public sealed record GroupRoster(IReadOnlyList<Pupil> Class, IReadOnlyList<Pupil> Pupils, IReadOnlyList<Pupil> Absent)
{
    /// <summary>Pupils that can be grouped at most.</summary>
    public const int MostPupils = 200;

    /// <summary>Whether there is anybody to group, and not more than can be.</summary>
    public bool CanBeGrouped => Pupils.Count is > 0 and <= MostPupils;

    /// <summary>Who is grouped.</summary>
    /// <param name="record">The lesson.</param>
    /// <param name="leavesOutAbsent">Whether those noted as absent in this lesson are left out.</param>
    public static GroupRoster Of(LessonRecord record, bool leavesOutAbsent)
    {
        var absent = EntryLog.Current(record.Entries).Where(e => e is { Fact: Presence { IsPresent: false }, PupilId: not null }).Select(e => e.PupilId!.Value).ToHashSet();
        return new(
            record.Pupils, leavesOutAbsent ? [.. record.Pupils.Where(p => !absent.Contains(p.Id))] : record.Pupils, [.. record.Pupils.Where(p => absent.Contains(p.Id))]);
    }

    /// <summary>What a pupil is called among the others.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <returns>The label; empty for somebody who is not in the class.</returns>
    public string NameOf(Guid pupilId) => Class.FirstOrDefault(p => p.Id == pupilId)?.Label ?? "";
}
