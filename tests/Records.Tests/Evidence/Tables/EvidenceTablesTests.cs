using System.Globalization;
using System.Text;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence.Tables;
using Slantwise.Records.Safety;
using Slantwise.Records.Units;

namespace Slantwise.Records.Tests.Evidence.Tables;

public sealed class EvidenceTablesTests
{
    private static LessonBuilder Lesson()
    {
        var lesson = new LessonBuilder().Pupils("=1+1", "Ben").Task(1, "V-sit, long", ["chest \"up\""], (1, 3, null))
            .Set("=1+1", 1, level: 1, predicted: 2, tries: "1 0 2.5s 3.0s 1", cues: "1", decision: NextLevel.Harder).Set("Ben", 1, level: 1, tries: "1");
        lesson.Add("=1+1", 1, 1, new TeacherCheck(1, false, true));
        lesson.Add("Ben", null, null, new Visit(VisitTopic.Cue, VisitForm.Asked, "-2 + 3"));
        lesson.Add("Ben", 1, null, new Note("=right arm"));
        return lesson;
    }

    private static string[] Lines(string key)
    {
        var bytes = EvidenceTables.Of(key, [Lesson().Record()])!.ToCsv();
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        return Encoding.UTF8.GetString(bytes[3..]).Split(["\r\n", "\n"], StringSplitOptions.RemoveEmptyEntries);
    }

    [Fact]
    public void Of_EveryKey_HasAsManyCellsAsHeadings()
    {
        foreach (var key in EvidenceTables.Keys)
        {
            var table = EvidenceTables.Of(key, [Lesson().Record()])!;
            Assert.Equal(key, table.Key);
            Assert.All(table.Rows, row => Assert.Equal(table.Headings.Count, row.Count));
            Assert.Equal(table.Headings.Count, table.Headings.Distinct().Count());
        }
        Assert.Null(EvidenceTables.Of("nothing", []));
        Assert.Empty(EvidenceTables.Of("levels", [])!.Rows);
    }

    [Fact]
    public void Of_EveryColumn_IsExplainedInTheDocs()
    {
        var sections = File.ReadAllText(Path.Combine(Checkout.Root, "docs", "tables.md")).Split("\n## ").Skip(1).ToDictionary(s => s[..s.IndexOf('\n')].Trim());
        List<EvidenceTable> tables =
        [
            .. EvidenceTables.Keys.Select(key => EvidenceTables.Of(key, [Lesson().Record()])!), IncidentTable.Of([], [], [], [], []), UnitCoverageTable.Of(new(), []),
        ];
        Assert.Equal(tables.Select(t => t.Key).Order(), sections.Keys.Order());
        foreach (var table in tables)
            Assert.All(table.Headings, h => Assert.Contains($"`{h}`", sections[table.Key]));
    }

    [Fact]
    public void ToCsv_TextThatASpreadsheetWouldRun_IsGuarded()
    {
        Assert.Contains(Lines("pupils"), l => l.StartsWith("'=1+1,", StringComparison.Ordinal));
        Assert.EndsWith(",'-2 + 3", Lines("talks")[1]);
        Assert.Equal(["day,pupil,task,text", "2027-03-08,Ben,\"V-sit, long\",'=right arm"], Lines("notes"));
        foreach (var key in EvidenceTables.Keys) Assert.DoesNotContain(Lines(key).SelectMany(l => l.Split(',')), c => c.StartsWith('=') || c.StartsWith("\"=", StringComparison.Ordinal));
    }

    [Fact]
    public void ToCsv_ASet_IsOneRowWithNothingInventedWhereNothingIsKnown()
    {
        var lines = Lines("sets");
        Assert.Equal("day,pupil,task,set,level,predicted_successes,predicted_s,successes,tries,times_s,cues_open,decision,reason", lines[0]);
        Assert.Equal("2027-03-08,'=1+1,\"V-sit, long\",1,1,2,,3,5,? ? 2.5 3 ?,none,Harder,", lines[1]);
        Assert.Equal("2027-03-08,Ben,\"V-sit, long\",1,1,,,1,1,,,,", lines[2]);
    }

    [Fact]
    public void ToCsv_LessonsAndTalks_CountWhatIsWritten()
    {
        // By hand: one set each, so nobody moved; Ada's stand-in predicted 2 of 5 and 3 came; one pupil of two was talked with.
        Assert.Equal("2027-03-08,Lesson 1,0,0,0,0,0,0,1,0,1,0,-1,1,tries,2,1,1", Lines("lessons")[1]);
        Assert.Equal(["'=1+1,1,1,0,0,0,0,0,0,0,0,0", "Ben,1,0,1,1,0,0,0,0,1,0,0"], Lines("visits")[1..]);
        Assert.Equal("\"V-sit, long\",Stretch,1,yes", Lines("patterns")[1]);
        Assert.Single(Lines("observers"));
        Assert.Single(Lines("growth"));
    }

    [Fact]
    public void ToCsv_InAnotherLanguage_IsTheSame()
    {
        var (before, english) = (CultureInfo.CurrentCulture, Lines("levels"));
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("es-ES");
            Assert.Equal(english, Lines("levels"));
            // By hand: 4 of 6, quoted as the sheet says it.
            Assert.StartsWith("\"V-sit, long\",1,way 1,3,HoldS,2,2,2,2,4,6,0.", english[1]);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
