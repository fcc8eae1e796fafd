using Slantwise.Engines.Planning.Groups;
using Slantwise.Records.Groups;
using Slantwise.Records.Lessons;
using static Slantwise.Desk.Words.GroupWords;

namespace Slantwise.Desk.Pages.Groups;

/// <summary>A sitting at a lesson's groups: the plan as it is now, what is to be said of it, and the way back.</summary>
/// <param name="record">The lesson.</param>
/// <param name="start">What it begins with.</param>
public sealed class GroupSession(LessonRecord record, GroupPlan start)
{
    private const int StepsAtMost = 100;

    private readonly LinkedList<GroupPlan> _before = [];

    /// <summary>The plan as it is now.</summary>
    public GroupPlan Plan { get; private set; } = start;

    /// <summary>Who is grouped now.</summary>
    public GroupRoster Roster { get; private set; } = GroupRoster.Of(record, start.LeavesOutAbsent);

    /// <summary>What is to be said of the groups.</summary>
    public GroupReading Reading { get; private set; } = new("", "", []);

    /// <summary>Why the last making made none; none where it made some.</summary>
    public GroupNote? WhyNone { get; private set; }

    /// <summary>What the last step did, for who hears the page.</summary>
    public string Said { get; private set; } = "";

    /// <summary>Whether there is a step to take back.</summary>
    public bool CanUndo => _before.Count > 0;

    /// <summary>Pupils who are in no group, in the order of the class.</summary>
    public IReadOnlyList<Guid> Outside => Plan.Groups.Count == 0 ? [] : [.. Roster.Pupils.Select(p => p.Id).Where(p => Plan.GroupOf(p) is null)];

    /// <summary>How many groups would be made now.</summary>
    public int GroupsAsked => Plan.Sizing.GroupsFor(Roster.Pupils.Count);

    /// <summary>Reads the plan for the first time.</summary>
    public void Read() => Reading = Roster.CanBeGrouped ? GroupReading.Of(Roster, Plan, System.Globalization.CultureInfo.CurrentUICulture) : new("", "", []);

    /// <summary>Changes the plan: one step to take back.</summary>
    /// <param name="plan">The plan as it is to be; the same one changes nothing.</param>
    /// <param name="said">What that did, for who hears the page; nothing where it shows by itself.</param>
    /// <returns>Whether anything changed.</returns>
    public bool Change(GroupPlan plan, string said = "")
    {
        if (ReferenceEquals(plan, Plan)) return false;
        _before.AddLast(Plan);
        if (_before.Count > StepsAtMost) _before.RemoveFirst();
        Show(plan, said);
        return true;
    }

    /// <summary>Takes the last step back.</summary>
    public void Undo()
    {
        if (_before.Last is not { } last) return;
        _before.RemoveLast();
        Show(last.Value, Say("SaidUndone"));
    }

    /// <summary>Makes groups with the plan as it is, or with another seed.</summary>
    /// <param name="seed">The seed; none for the plan's.</param>
    /// <returns>Whether anything changed.</returns>
    public bool Make(int? seed = null)
    {
        if (!Roster.CanBeGrouped) return false;
        var making = GroupMaking.Of(Roster, Plan with { Seed = seed ?? Plan.Seed }, record.Lesson.MatCount);
        var why = GroupReading.WhyNone(making, System.Globalization.CultureInfo.CurrentUICulture);
        var isChanged = why is null && Change(making.Plan);
        WhyNone = why;
        Said = why?.Sentence ?? string.Join(' ', [Say("SaidMade"), Reading.Sizes, .. Reading.Notes.Select(n => n.Sentence)]);
        return isChanged;
    }

    /// <summary>Makes other groups with what is wished: those of the next seed.</summary>
    /// <returns>Whether anything changed.</returns>
    public bool MakeOthers() => Make((Plan.Seed + 1) % GroupPlan.SeedCount);

    /// <summary>Moves a pupil by hand. What that leaves unmet is said at once.</summary>
    /// <param name="pupilId">The pupil; somebody who is not grouped is passed over.</param>
    /// <param name="group">The group, from 0; one that is not there is passed over.</param>
    /// <returns>Whether anything changed.</returns>
    public bool Move(Guid pupilId, int group)
    {
        if (group < 0 || group >= Plan.Groups.Count || Roster.Pupils.All(p => p.Id != pupilId)) return false;
        if (!Change(Plan.Moved(pupilId, group))) return false;
        Said = string.Join(' ', [Say("SaidMoved", Roster.NameOf(pupilId), group + 1), .. Reading.Notes.Select(n => n.Sentence)]);
        return true;
    }

    /// <summary>Fixes a pupil where they are, or frees them.</summary>
    /// <param name="pupilId">The pupil.</param>
    /// <returns>Whether anything changed.</returns>
    public bool ToggleLock(Guid pupilId) => Change(
        Plan.WithLock(pupilId, !Plan.IsLocked(pupilId)), Say(Plan.IsLocked(pupilId) ? "SaidFree" : "SaidFixed", Roster.NameOf(pupilId)));

    /// <summary>Takes other mats for a group.</summary>
    /// <param name="group">The group, from 0.</param>
    /// <param name="typed">What was typed.</param>
    /// <returns>Whether it could be read; where not, nothing changes.</returns>
    public bool SetMats(int group, string typed)
    {
        if (GroupMats.Read(typed) is not { } mats) return false;
        if (!mats.SequenceEqual(Plan.Groups[group].MatNumbers)) Change(Plan.WithMats(group, mats));
        return true;
    }

    /// <summary>Shares the lesson's mats out anew.</summary>
    public void ShareMats()
    {
        var shared = GroupMats.Shared(record.Lesson.MatCount, Plan.Groups.Count);
        Change(Plan with { Groups = [.. Plan.Groups.Select((g, i) => g with { MatNumbers = shared[i] })] });
    }

    /// <summary>Leaves those noted as absent out, or takes them in again.</summary>
    /// <param name="leavesOut">Whether they are left out.</param>
    public void LeaveOutAbsent(bool leavesOut) => Change((Plan with { LeavesOutAbsent = leavesOut }).For(GroupRoster.Of(record, leavesOut)));

    /// <summary>Whether the goal asks for something nobody said yet.</summary>
    public bool IsGoalEmpty => Plan.Goal != GroupGoal.Any && Plan.Known.All(k => k.Experience is null);

    private void Show(GroupPlan plan, string said)
    {
        Plan = plan;
        Roster = GroupRoster.Of(record, plan.LeavesOutAbsent);
        (WhyNone, Said) = (null, said);
        Read();
    }
}
