using Slantwise.Desk.Pages.Safety;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;

namespace Slantwise.Surface.Tests.Desk.Safety;

public sealed class IncidentDraftTests
{
    private static readonly DateOnly Today = new(2027, 3, 8);
    private static readonly Guid Id = new(1, 0, 0, new byte[8]);

    [Fact]
    public void New_OfALesson_TakesItsDayAndClass()
    {
        var draft = IncidentDraft.New(LessonOn(Today.AddDays(-3)), Today);
        Assert.Equal((Today.AddDays(-3), Id, Id), (draft.Day, draft.LessonId, draft.ClassId));
        // A lesson still to come has not happened: what is logged was seen while it was prepared.
        Assert.Equal(Today, IncidentDraft.New(LessonOn(Today.AddDays(3)), Today).Day);
        Assert.Null(draft.Kind);
    }

    [Fact]
    public void ToIncident_OfAKeptOne_IsTheSame()
    {
        var incident = new Incident
        {
            SchoolId = Id, Id = Id, Kind = IncidentKind.NearMiss, Day = Today, MinuteOfDay = 579, LessonId = Id, TaskId = Id, Place = "far wall", Happened = "a", Done = "b", Changed = "c",
            PupilIds = [new(2, 0, 0, new byte[8]), new(3, 0, 0, new byte[8])], WrittenAt = DateTimeOffset.UnixEpoch,
        };
        var again = IncidentDraft.Of(incident, LessonOn(Today)).ToIncident(Id, Id, incident.WrittenAt, Today);
        Assert.Equal(incident with { PupilIds = again.PupilIds }, again);
        Assert.Equal(incident.PupilIds, again.PupilIds);
    }

    [Fact]
    public void ToIncident_NothingTyped_IsRefusedNotGuessed()
    {
        var findings = IncidentCheck.Of(new IncidentDraft().ToIncident(Id, Id, DateTimeOffset.UnixEpoch, Today), Today);
        Assert.Equal(["IncidentKindUnknown", "IncidentSaysNothing"], findings.Select(f => f.Key));
    }

    private static Lesson LessonOn(DateOnly day) => new() { SchoolId = Id, Id = Id, ClassId = Id, Date = day };
}
