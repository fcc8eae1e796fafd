using System.Globalization;
using CsCheck;
using Slantwise.Records.Checks;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Tests.Tasks.Checks;

namespace Slantwise.Records.Tests.Tasks.Files;

public sealed class DesignFileTests
{
    private static readonly Guid School = new("019ba208-0000-7000-8000-000000000001");
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    private static readonly Gen<string> Words = Gen.String[Gen.Char[" aéñ¿\"\\<'&\t"], 0, 20].Select(text => "a" + text);

    [Fact]
    public void Read_GoodFile_GivesFactsAndWords()
    {
        var reading = DesignFile.Read("t.json", SampleTask.Text);
        Assert.Empty(reading.Findings);
        var design = reading.Design!;
        Assert.Equal(MovementPattern.StaticBalance, design.Pattern);
        Assert.Equal([SupportPart.Hand, SupportPart.Foot], design.Supports);
        Assert.Equal(new MatNeed(1, MatShare.Pupil), design.Mats);
        Assert.Equal([DoseKind.HoldS], design.DoseKinds);
        Assert.Equal([BodyDemand.HandWeight], design.Needs);
        Assert.Equal(["en", "es"], design.Words.Keys);
        Assert.Equal(new Adaptation(StepLetter.People, FunctionNeed.Sight, "Una pareja habla."), design.Words["es"].Adaptations[3]);
    }

    [Fact]
    public void Moved_BetweenNeighbours_NamesTheFactorsThatDiffer()
    {
        // By hand from the sample: wall to bench; wide for 5 s to narrow for 10 s.
        var design = DesignFile.Read("t.json", SampleTask.Text).Design!;
        Assert.Equal(["slope"], design.Moved(design.Levels[0], design.Levels[1]).Select(f => f.Key));
        Assert.Equal(["width", "holdS"], design.Moved(design.Levels[2], design.Levels[3]).Select(f => f.Key));
        Assert.Empty(design.Moved(design.Levels[2], design.Levels[2]));
    }

    [Fact]
    public void ToTask_InALanguage_TakesItsWordsAndTheSameFacts()
    {
        var design = DesignFile.Read("t.json", SampleTask.Text).Design!;
        var (english, spanish) = (design.ToTask("en", School), design.ToTask("es", School));
        Assert.Equal(("Front support", "Apoyo facial"), (english.Name, spanish.Name));
        Assert.Equal(english.Levels.Select(l => (l.Id, l.Dose, l.Posture)), spanish.Levels.Select(l => (l.Id, l.Dose, l.Posture)));
        Assert.Equal("Manos en un banco", spanish.Levels[1].Name);
        // A language it lacks falls back to English.
        Assert.Equal("Front support", design.ToTask("fi", School).Name);
    }

    [Theory]
    [InlineData("\"staticBalance\"", "\"flying\"", "t.json, pattern: \"flying\" is not known here. Allowed: staticBalance, weightOnHands,")]
    [InlineData("[\"hand\", \"foot\"]", "[\"hand\", \"nose\"]", "t.json, supports[1]: \"nose\" is not known here. Allowed: foot, knee,")]
    [InlineData("\"count\": 1", "\"count\": \"one\"", "t.json, mats.count: a number is needed here.")]
    [InlineData("\"per\": \"pupil\"", "\"per\": \"class\"", "t.json, mats.per: \"class\" is not known here. Allowed: pupil, pair.")]
    [InlineData("\"prerequisites\": []", "\"prerequisites\": [\"bench\"]", "t.json, prerequisites[0]: an id is needed here, a UUID in quotes.")]
    [InlineData("{\"holdS\": 10}", "{\"holdS\": 0}", "t.json, levels[3].dose: one dose with a number above 0 is needed here")]
    [InlineData("019ba208-1f95", "019ba208-1f94-745b-9a9f-2edc0b9ca147\", \"x\": \"", "t.json, levels[1].id: the id 019ba208-1f94-745b-9a9f-2edc0b9ca147 already belongs")]
    [InlineData("\"space\": { \"calm\": \"A mat apart.\" }", "\"room\": { \"calm\": \"A mat apart.\" }", "t.json, words.en.adaptations.room: \"room\" is not known here. Allowed: space, task, equipment, people.")]
    [InlineData("\"calm\": \"A mat apart.\"", "\"shy\": \"A mat apart.\"", "t.json, words.en.adaptations.space: \"shy\" is not known here. Allowed: seated,")]
    [InlineData("\"question\": \"Where are your shoulders?\"", "\"q\": \"?\"", "t.json, words.en.errors[1].question: a text is needed here.")]
    [InlineData("slantwise-task/2", "slantwise-task/1", "t.json: the format is \"slantwise-task/1\"; this program reads \"slantwise-task/2\".")]
    public void Read_OneThingWrong_RefusesAndSaysFileAndPlace(string right, string wrong, string sentence)
    {
        Assert.Contains(right, SampleTask.Text);
        var reading = DesignFile.Read("t.json", SampleTask.Text.Replace(right, wrong));
        Assert.Null(reading.Design);
        Assert.Contains(reading.Findings, f => f.Sentence(English).StartsWith(sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_FieldFromALaterVersion_IsPassedOverAndSaid()
    {
        var reading = DesignFile.Read("t.json", SampleTask.Text.Replace("\"supports\"", "\"music\": 3, \"supports\""));
        Assert.NotNull(reading.Design);
        Assert.Equal("t.json, music: this field is not known and was passed over.", Assert.Single(reading.Findings).Sentence(English));
    }

    [Fact]
    public void TaskFileRead_OfTheSecondFormat_GivesTheTaskInTheLanguageAskedFor()
    {
        Assert.Equal("Apoyo facial", TaskFile.Read("t.json", SampleTask.Text, School, "es").Task!.Name);
        Assert.Equal("Front support", TaskFile.Read("t.json", SampleTask.Text, School).Task!.Name);
        var facts = DesignFile.WriteFacts(DesignFile.Read("t.json", SampleTask.Text).Design!);
        var reading = TaskFile.Read("t.json", facts, School);
        Assert.Null(reading.Task);
        Assert.StartsWith("t.json, words: the task has no words", Assert.Single(reading.Findings).Sentence(English));
    }

    [Fact]
    public void Write_AnyDesign_ReadsBackTheSameWholeAndInPieces() => Designs().Sample(design =>
    {
        var text = DesignFile.Write(design);
        var whole = DesignFile.Read("x.json", text);
        var texts = design.Words.ToDictionary(w => $"{w.Key}/tasks/x.json", w => DesignFile.WriteWords(w.Value));
        texts["tasks/x.json"] = DesignFile.WriteFacts(design);
        var pieces = Assert.Single(TaskFolder.Read(texts));
        return whole.Findings.Count == 0 && DesignFile.Write(whole.Design!) == text && Same(design, whole.Design!)
            && pieces.Findings.Count == 0 && DesignFile.Write(pieces.Design!) == text;
    });

    // Not by what was written: part against part, so that a part which is never written is missed.
    private static bool Same(TaskDesign one, TaskDesign other) =>
        (one.Id, one.Pattern, one.Mats, one.Space) == (other.Id, other.Pattern, other.Mats, other.Space)
        && one.Supports.SequenceEqual(other.Supports) && one.Prerequisites.SequenceEqual(other.Prerequisites)
        && one.Factors.Zip(other.Factors).All(f => (f.First.Key, f.First.Kind, f.First.Role, f.First.Unit) == (f.Second.Key, f.Second.Kind, f.Second.Role, f.Second.Unit) && f.First.Range.SequenceEqual(f.Second.Range))
        && one.Levels.Zip(other.Levels).All(l => (l.First.Id, l.First.Dose, l.First.Posture) == (l.Second.Id, l.Second.Dose, l.Second.Posture)
            && l.First.Demands.SequenceEqual(l.Second.Demands) && l.First.Settings.SequenceEqual(l.Second.Settings))
        && one.Words.Keys.Order().SequenceEqual(other.Words.Keys.Order()) && one.Words.All(w => Same(w.Value, other.Words[w.Key]));

    private static bool Same(TaskWords one, TaskWords other) =>
        (one.Language, one.Name, one.Purpose, one.Caution) == (other.Language, other.Name, other.Purpose, other.Caution)
        && one.Cues.SequenceEqual(other.Cues) && one.Levels.SequenceEqual(other.Levels) && one.Errors.SequenceEqual(other.Errors) && one.Adaptations.SequenceEqual(other.Adaptations)
        && one.Factors.Keys.SequenceEqual(other.Factors.Keys) && one.Factors.All(f => f.Value.Name == other.Factors[f.Key].Name && f.Value.Values.SequenceEqual(other.Factors[f.Key].Values));

    private static Gen<TaskDesign> Designs()
    {
        var id = Gen.Guid.Where(g => g != Guid.Empty);
        var key = Gen.Char['a', 'z'].Array[1, 6].Select(letters => new string(letters));
        var value = Gen.OneOf(Gen.Int[1, 900].Select(n => FactorValue.Of(n / 10m)), key.Select(FactorValue.Of));
        var factor =
            from k in key
            from kind in Gen.Enum<FactorKind>()
            from role in Gen.Enum<FactorRole>()
            from unit in Gen.Enum<FactorUnit>()
            from hasUnit in Gen.Bool
            from range in value.Array[0, 4]
            select new TaskFactor { Key = k, Kind = kind, Role = role, Unit = hasUnit ? unit : null, Range = range };
        var level =
            from g in id
            from kind in Gen.Enum<DoseKind>()
            from tenths in Gen.Int[1, 500]
            from settings in Gen.Select(key, value).Array[0, 3]
            from demands in Gen.Enum<BodyDemand>().Array[0, 2]
            from posture in Gen.Int[0, 1].Select(pick => new[] { null, "stork" }[pick])
            select new DesignedLevel { Id = g, Dose = new Dose(kind, tenths / 10m), Settings = settings.DistinctBy(s => s.Item1).ToDictionary(s => s.Item1, s => s.Item2), Demands = demands, Posture = posture };
        return
            from g in id
            from pattern in Gen.Enum<MovementPattern>()
            from supports in Gen.Enum<SupportPart>().Array[0, 3]
            from mats in Gen.Select(Gen.Int[0, 4], Gen.Enum<MatShare>())
            from space in Gen.Int[1, 100]
            from prerequisites in id.Array[0, 2]
            from factors in factor.Array[0, 3]
            from levels in level.Array[0, 4]
            where levels.DistinctBy(l => l.Id).Count() == levels.Length
            from english in WordsOf("en", levels.Length)
            from spanish in WordsOf("es", levels.Length)
            select new TaskDesign
            {
                Id = g, Pattern = pattern, Supports = supports, Mats = new MatNeed(mats.Item1, mats.Item2), Space = new ClearSpace(space / 10m, "commonPractice"),
                Prerequisites = prerequisites, Factors = factors, Levels = levels,
                Words = new Dictionary<string, TaskWords> { ["en"] = english, ["es"] = spanish },
            };
    }

    private static Gen<TaskWords> WordsOf(string language, int levelCount) =>
        from texts in Gen.Select(Words, Words, Words)
        from cues in Words.Array[0, 4]
        from levels in Words.Array[levelCount]
        from errors in Gen.Select(Words, Words, Words).Array[0, 2]
        from changes in Gen.Select(Gen.Enum<StepLetter>(), Gen.Enum<FunctionNeed>(), Words).Array[0, 4]
        from factors in Gen.Select(Words, Words.Array[0, 2]).Array[0, 2]
        select new TaskWords
        {
            Language = language, Name = texts.Item1, Purpose = texts.Item2, Caution = texts.Item3, Cues = cues, Levels = levels,
            Errors = [.. errors.Select(e => new MovementError(e.Item1, e.Item2, e.Item3))],
            Adaptations = [.. changes.DistinctBy(c => (c.Item1, c.Item2)).OrderBy(c => c.Item1).Select(c => new Adaptation(c.Item1, c.Item2, c.Item3))],
            Factors = factors.Select((f, i) => ($"f{i}", new FactorWords(f.Item1, f.Item2.Select((v, j) => ($"v{j}", v)).ToDictionary()))).ToDictionary(),
        };
}
