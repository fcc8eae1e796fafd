using System.Text;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;

namespace Slantwise.Records.Tests.Safety;

public sealed class IncidentTableTests
{
    private static readonly Guid Ids = new(9, 0, 0, new byte[8]);
    private static readonly SchoolClass Class = new() { SchoolId = Guid.Empty, Id = Ids, Name = "7 Heron" };
    private static readonly Lesson Lesson = new() { SchoolId = Guid.Empty, Id = Ids, ClassId = Ids, Date = new DateOnly(2027, 3, 8), Title = "Rolls" };
    private static readonly MovementTask Task = new() { SchoolId = Guid.Empty, Id = Ids, Name = "Forward roll" };
    private static readonly Pupil[] Pupils = [new() { SchoolId = Guid.Empty, Id = Ids, Code = "H-01", DisplayName = "Ana" }, new() { SchoolId = Guid.Empty, Id = new(10, 0, 0, new byte[8]), Code = "H-02" }];

    [Fact]
    public void Of_Log_HasARowEachWithEmptyCellsForWhatNobodyNoted()
    {
        Incident[] log =
        [
            RiskLesson.Incident(Ids, new DateOnly(2027, 3, 8), "=Two on one mat,\n\"really\".") with { LessonId = Ids, MinuteOfDay = 9 * 60 + 5, PupilIds = [Pupils[1].Id, Pupils[0].Id] },
            RiskLesson.Incident(null, new DateOnly(2027, 3, 1), "Wet floor.", "") with { Kind = IncidentKind.Incident },
        ];
        var table = IncidentTable.Of(log, [Lesson], [Class], [Task], Pupils);
        Assert.All(table.Rows, row => Assert.Equal(table.Headings.Count, row.Count));
        var csv = Encoding.UTF8.GetString(table.ToCsv()[3..]).Replace("\r\n", "\n");
        Assert.Equal(
            "day,time,kind,class,lesson,task,place,happened,done,changed,pupils\n"
            + "2027-03-08,09:05,NearMiss,7 Heron,Rolls,Forward roll,,\"'=Two on one mat,\n\"\"really\"\".\",,One mat each.,Ana; H-02\n"
            + "2027-03-01,,Incident,,,,,Wet floor.,,,\n",
            csv);
    }
}
