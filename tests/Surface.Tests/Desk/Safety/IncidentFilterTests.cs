using Slantwise.Desk.Pages.Safety;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;

namespace Slantwise.Surface.Tests.Desk.Safety;

public sealed class IncidentFilterTests
{
    private static readonly DateOnly Today = new(2027, 3, 8);
    private static readonly Guid Heron = new(1, 0, 0, new byte[8]);
    private static readonly Guid Kestrel = new(2, 0, 0, new byte[8]);
    private static readonly Lesson[] Lessons = [LessonOf(11, Heron), LessonOf(12, Kestrel)];

    // Newest first: a near miss of each class, an incident outside of a lesson, an old incident.
    private static readonly Incident[] Log =
    [
        Of("a", IncidentKind.NearMiss, 0, Lessons[0].Id), Of("b", IncidentKind.NearMiss, 30, Lessons[1].Id), Of("c", IncidentKind.Incident, 31, null), Of("d", IncidentKind.Incident, 366, Lessons[0].Id),
    ];

    [Theory]
    [InlineData("", "abcd")]
    [InlineData("?kind=NearMiss", "ab")]
    [InlineData("?kind=incident", "cd")]
    [InlineData("?time=Month", "ab")]
    [InlineData("?time=year", "abc")]
    [InlineData("?class=00000001-0000-0000-0000-000000000000", "ad")]
    [InlineData("?class=00000001-0000-0000-0000-000000000000&kind=Incident&time=Month", "")]
    [InlineData("?kind=7&time=never&class=x", "abcd")]
    public void Found_OfALog_IsWhatTheAddressAsks(string query, string expected)
    {
        var filter = IncidentFilter.Of(query);
        Assert.Equal(expected, string.Concat(filter.Found(Log, Lessons, Today).Select(i => i.Happened)));
        Assert.Equal(filter, IncidentFilter.Of(filter.Query));
        Assert.Equal(filter.IsEmpty, filter.Query.Length == 0);
    }

    private static Lesson LessonOf(int number, Guid ofClass) => new() { SchoolId = Guid.Empty, Id = new(number, 0, 0, new byte[8]), ClassId = ofClass, Date = Today };

    private static Incident Of(string happened, IncidentKind kind, int daysAgo, Guid? lesson) => new()
    {
        SchoolId = Guid.Empty, Id = Guid.CreateVersion7(), Kind = kind, Day = Today.AddDays(-daysAgo), LessonId = lesson, Happened = happened, WrittenAt = DateTimeOffset.UnixEpoch,
    };
}
