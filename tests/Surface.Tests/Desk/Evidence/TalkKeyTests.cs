using Slantwise.Desk.Pages.Evidence;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class TalkKeyTests
{
    private static readonly Guid Pupil = new("20000000-0000-0000-0000-000000000001");

    [Theory]
    [InlineData("30000000-0000-0000-0000-000000000001")]
    [InlineData(null)]
    public void Read_ButtonOfAConference_NamesPupilTaskAndTopic(string? taskId)
    {
        Guid? task = taskId is null ? null : new Guid(taskId);
        var conference = new Conference { PupilId = Pupil, Label = "Ada", Topic = VisitTopic.Cue, TaskId = task, ReasonKey = "", QuestionKey = "" };
        Assert.Equal(new TalkKey(Pupil, task, VisitTopic.Cue), TalkKey.Read(TalkKey.Of(conference)));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("..")]
    [InlineData("20000000000000000000000000000001.x.Cue")]
    [InlineData("20000000000000000000000000000001..9")]
    public void Read_OtherText_IsNone(string? text) => Assert.Null(TalkKey.Read(text));
}
