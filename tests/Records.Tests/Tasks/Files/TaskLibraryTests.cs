using System.Globalization;
using System.Text.Json;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tests.Tasks.Files;

public sealed class TaskLibraryTests
{
    private static readonly Guid School = new("019ba208-0000-7000-8000-000000000001");

    public static TheoryData<string> Languages => [.. TaskLibrary.Languages];

    [Fact]
    public void Languages_InTheLibrary_AreEnglishThenSpanish() => Assert.Equal(["en", "es"], TaskLibrary.Languages);

    [Theory]
    [MemberData(nameof(Languages))]
    public void Read_EveryFile_HasATaskAndNothingToSay(string language)
    {
        var readings = TaskLibrary.Read(CultureInfo.GetCultureInfo(language), School);
        Assert.Equal(
            ["arabesque.json", "frog-balance.json", "one-foot-balance.json", "rope-jumping.json", "target-throw.json", "v-sit.json"],
            readings.Select(r => r.FileName));
        Assert.All(readings, r =>
        {
            Assert.Empty(r.Findings.Select(f => f.Sentence(CultureInfo.InvariantCulture)));
            Assert.NotNull(r.Task);
            Assert.Equal(School, r.Task.SchoolId);
        });
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void Read_EveryTask_KeepsToWhatPupilsCanUse(string language)
    {
        foreach (var task in TaskLibrary.Read(CultureInfo.GetCultureInfo(language), School).Select(r => r.Task!))
        {
            Assert.InRange(task.Cues.Count, 3, 4);
            Assert.All(task.Cues, cue => Assert.InRange(WordCount(cue), 1, 9));
            // Something to do, feel or see: never what not to do.
            Assert.All(task.Cues, cue => Assert.DoesNotMatch(@"(?i)\b(don't|do not|never|not|no|nunca|sin)\b", cue));
            Assert.Equal(1, task.Purpose.Count(c => c is '.' or '!' or '?'));
            Assert.InRange(task.Levels.Count, 4, 5);
            Assert.Equal(task.Levels.Count, task.Levels.DistinctBy(l => (l.Name, l.Dose)).Count());
            Assert.All(task.Levels, level => Assert.InRange(level.Name.Length, 1, 80));
            // The easiest level asks nothing that a restriction could rule out: it includes everybody.
            Assert.Empty(task.Levels[0].Demands);
        }
    }

    [Fact]
    public void Texts_InSpanish_DifferFromEnglishInWordsOnly()
    {
        var english = TaskLibrary.Texts(CultureInfo.GetCultureInfo("en"));
        var spanish = TaskLibrary.Texts(CultureInfo.GetCultureInfo("es"));
        Assert.Equal(english.Keys, spanish.Keys);
        foreach (var file in english.Keys)
        {
            using var en = JsonDocument.Parse(english[file]);
            using var es = JsonDocument.Parse(spanish[file]);
            Assert.Equal(Shape(en.RootElement, ""), Shape(es.RootElement, ""));
        }
    }

    [Fact]
    public void Read_LanguageWithoutTasks_FallsBackToEnglish() => Assert.Equal(
        TaskLibrary.Texts(CultureInfo.GetCultureInfo("en")), TaskLibrary.Texts(CultureInfo.GetCultureInfo("fi")));

    [Fact]
    public void Read_AllTasks_NoIdTwice()
    {
        var tasks = TaskLibrary.Read(CultureInfo.GetCultureInfo("en"), School).Select(r => r.Task!).ToList();
        var ids = tasks.Select(t => t.Id).Concat(tasks.SelectMany(t => t.Levels).Select(l => l.Id)).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(ids, id => Assert.Equal(7, id.Version));
    }

    private static int WordCount(string cue) => cue.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;

    // Everything but the words: fields, ids, doses, demands, and how many of each; a caution is there in both or in neither.
    private static IEnumerable<string> Shape(JsonElement element, string path) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Shape(p.Value, $"{path}.{p.Name}")),
        JsonValueKind.Array => element.EnumerateArray().SelectMany((item, i) => Shape(item, $"{path}[{i}]")),
        JsonValueKind.String when path.Contains(".name") || path.Contains(".purpose") || path.Contains(".cues") || path.Contains(".caution") =>
            [$"{path}: {(element.GetString() == "" ? "empty" : "words")}"],
        _ => [$"{path}: {element}"],
    };
}
