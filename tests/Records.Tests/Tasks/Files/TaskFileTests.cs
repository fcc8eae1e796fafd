using System.Globalization;
using CsCheck;
using Slantwise.Records.Checks;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tests.Tasks.Files;

public sealed class TaskFileTests
{
    private const string Good = """
        {
          "format": "slantwise-task/1",
          "id": "019ba208-1f93-712e-b81b-3949d4320aeb",
          "name": "Side support",
          "cues": ["My body is one straight line."],
          "levels": [
            { "id": "019ba208-1f94-745b-9a9f-2edc0b9ca147", "name": "On the knees", "dose": {"holdS": 5} },
            { "id": "019ba208-1f95-7ccf-8aad-f0ce48ea4781", "name": "On the feet", "dose": {"holdS": 5}, "demands": ["handWeight"], "posture": "side-support" },
          ]
        }
        """;

    private static readonly Guid School = new("019ba208-0000-7000-8000-000000000001");
    private static readonly Gen<string> Words = Gen.String[Gen.Char[" aéñ\"\\<'&\t"], 0, 30].Select(text => "a" + text);

    [Fact]
    public void Read_GoodFile_GivesTheTask()
    {
        var reading = TaskFile.Read("side.json", Good, School);
        Assert.Empty(reading.Findings);
        Assert.Equal("Side support", reading.Task!.Name);
        Assert.Equal("", reading.Task.Purpose);
        Assert.Equal([new Dose(DoseKind.HoldS, 5), new Dose(DoseKind.HoldS, 5)], reading.Task.Levels.Select(l => l.Dose));
        Assert.Equal([BodyDemand.HandWeight], reading.Task.Levels[1].Demands);
        Assert.Equal([null, "side-support"], reading.Task.Levels.Select(l => l.Posture));
    }

    [Theory]
    [InlineData("\"name\": \"On the knees\", ", "", "side.json, levels[0].name: a text is needed here.")]
    [InlineData("{\"holdS\": 5}, \"demands\"", "{\"holdS\": 0}, \"demands\"", "side.json, levels[1].dose: one dose with a number above 0 is needed here")]
    [InlineData("{\"holdS\": 5}, \"demands\"", "{\"holdS\": 5, \"distanceM\": 2}, \"demands\"", "side.json, levels[1].dose: one dose")]
    [InlineData("{\"holdS\": 5}, \"demands\"", "{\"minutes\": 5}, \"demands\"", "side.json, levels[1].dose: one dose")]
    [InlineData("\"handWeight\"", "\"flying\"", "side.json, levels[1].demands[0]: \"flying\" is not a demand. Allowed: inversion, headWeight, roll, impact, handWeight, spotting.")]
    [InlineData("[\"handWeight\"]", "\"handWeight\"", "side.json, levels[1].demands: a list in square brackets is needed here.")]
    [InlineData("019ba208-1f93", "x", "side.json, id: an id is needed here, a UUID in quotes.")]
    [InlineData("019ba208-1f95-7ccf-8aad-f0ce48ea4781", "019ba208-1f94-745b-9a9f-2edc0b9ca147", "side.json, levels[1].id: the id 019ba208-1f94-745b-9a9f-2edc0b9ca147 already belongs")]
    [InlineData("[\"My body is one straight line.\"]", "[7]", "side.json, cues[0]: a text is needed here.")]
    [InlineData("slantwise-task/1", "slantwise-task/9", "side.json: the format is \"slantwise-task/9\"; this program reads \"slantwise-task/1\", \"slantwise-task/2\".")]
    public void Read_OneThingWrong_SaysFileAndPlace(string right, string wrong, string sentence)
    {
        Assert.Contains(right, Good);
        var reading = TaskFile.Read("side.json", Good.Replace(right, wrong), School);
        Assert.Null(reading.Task);
        Assert.StartsWith(sentence, Assert.Single(reading.Findings).Sentence(CultureInfo.GetCultureInfo("en")));
    }

    [Fact]
    public void Read_BrokenJson_SaysLineAndColumn()
    {
        var reading = TaskFile.Read("side.json", Good.Replace("\"name\": \"Side support\",", "\"name\": \"Side support\""), School);
        Assert.Null(reading.Task);
        Assert.StartsWith("side.json, line 5, column 3: this cannot be read as JSON.", Assert.Single(reading.Findings).Sentence(CultureInfo.GetCultureInfo("en")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("{\"format\": 3}")]
    public void Read_NotATask_IsRefusedInBothLanguages(string text)
    {
        var reading = TaskFile.Read("side.json", text, School);
        Assert.Null(reading.Task);
        Assert.Contains(reading.Findings, f => f.Severity == FindingSeverity.Refused);
        foreach (var language in new[] { "en", "es" })
            Assert.All(reading.Findings, f => Assert.StartsWith("side.json", f.Sentence(CultureInfo.GetCultureInfo(language))));
    }

    [Fact]
    public void Read_FieldFromALaterVersion_IsPassedOverAndSaid()
    {
        var reading = TaskFile.Read("side.json", Good.Replace("\"cues\"", "\"errors\": [], \"cues\""), School);
        Assert.NotNull(reading.Task);
        var finding = Assert.Single(reading.Findings);
        Assert.Equal(FindingSeverity.Flagged, finding.Severity);
        Assert.Equal("side.json, errors: this field is not known and was passed over.", finding.Sentence(CultureInfo.GetCultureInfo("en")));
    }

    [Fact]
    public void Read_SeveralThingsWrong_SaysAllOfThem()
    {
        var reading = TaskFile.Read("side.json", Good.Replace("\"handWeight\"", "\"a\", \"b\"").Replace("Side support", " "), School);
        Assert.Equal(3, reading.Findings.Count);
    }

    [Fact]
    public void Write_AnyTask_ReadsBackTheSame() => Tasks().Sample(task =>
    {
        var reading = TaskFile.Read("x.json", TaskFile.Write(task), task.SchoolId);
        return reading.Findings.Count == 0 && TaskFile.Write(reading.Task!) == TaskFile.Write(task) && Same(task, reading.Task!);
    });

    private static bool Same(MovementTask one, MovementTask other) =>
        (one.Id, one.Name, one.Purpose, one.Caution) == (other.Id, other.Name, other.Purpose, other.Caution)
        && one.Cues.SequenceEqual(other.Cues)
        && one.Levels.Count == other.Levels.Count
        && one.Levels.Zip(other.Levels).All(pair =>
            (pair.First.Id, pair.First.Name, pair.First.Dose, pair.First.Posture) == (pair.Second.Id, pair.Second.Name, pair.Second.Dose, pair.Second.Posture)
            && pair.First.Demands.SequenceEqual(pair.Second.Demands));

    private static Gen<MovementTask> Tasks()
    {
        var level =
            from id in Gen.Guid.Where(id => id != Guid.Empty)
            from name in Words
            from kind in Gen.Enum<DoseKind>()
            from hundredths in Gen.Int[1, 60_000]
            from demands in Gen.Enum<BodyDemand>().Array[0, 3]
            from posture in Gen.Int[0, 2].Select(pick => new[] { null, "stork", "no-such-posture" }[pick])
            select new Level { Id = id, Name = name, Dose = new Dose(kind, hundredths / 100m), Demands = demands, Posture = posture };
        return
            from id in Gen.Guid.Where(id => id != Guid.Empty)
            from words in Gen.Select(Words, Words, Words)
            from cues in Words.Array[0, 5]
            from levels in level.Array[0, 6]
            where levels.DistinctBy(l => l.Id).Count() == levels.Length
            select new MovementTask
            {
                SchoolId = School,
                Id = id,
                Name = words.Item1,
                Purpose = words.Item2,
                Caution = words.Item3,
                Cues = cues,
                Levels = levels,
            };
    }
}
