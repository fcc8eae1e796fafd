using System.Collections;
using System.Globalization;
using System.Resources;
using Slantwise.Records.Checks;
using Slantwise.Records.Tasks.Checks;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Words;

namespace Slantwise.Records.Tests.Tasks.Checks;

public sealed class DesignCheckTests
{
    private const string Second = "019ba208-2f93-712e-b81b-3949d4320aeb";
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");

    /// <summary>The rule, what is spoilt, and the start of what is said. Bad values by hand.</summary>
    public static TheoryData<string, string, string, string> Spoilt => new()
    {
        { "DesignMats", "\"count\": 1", "\"count\": 9", "t.json, mats.count: 9 is not a number of mats; 0 to 4" },
        { "DesignNeedsValue", "\"width\": 0.6}, \"demands\": [] }", "\"width\": true}, \"demands\": [] }", "t.json, levels[0].at.width: a number or a word in quotes is needed here." },
        { "DesignLanguage", "\"es\": {", "\"spanish\": {", "t.json, words.spanish: \"spanish\" is not a language" },
        { "DesignLevelNames", "\"Hands on a wall\", ", "", "t.json, words.en.levels: 3 names for 4 levels" },
        { "DesignSupports", "[\"hand\", \"foot\"]", "[]", "t.json, supports: name at least one part that carries. Allowed: foot, knee," },
        { "DesignSpace", "\"metres\": 1,", "\"metres\": 12,", "t.json, space.metres: 12 m is outside what a task may need; 0.5 to 10 m." },
        { "DesignSpaceSource", "\"commonPractice\"", "\"a book\"", "t.json, space.source: \"a book\" names no source. Allowed: \"commonPractice\"" },
        { "DesignFactorCount", "{ \"key\": \"holdS\"", "{ \"key\": \"a\", \"kind\": \"external\", \"role\": \"supporting\", \"range\": [\"x\", \"y\"] }, { \"key\": \"b\", \"kind\": \"external\", \"role\": \"supporting\", \"range\": [\"x\", \"y\"] }, { \"key\": \"c\", \"kind\": \"external\", \"role\": \"supporting\", \"range\": [\"x\", \"y\"] }, { \"key\": \"holdS\"", "t.json, factors: 6 factors; 2 to 5 are allowed." },
        { "DesignKeyFactor", "\"role\": \"key\"", "\"role\": \"supporting\"", "t.json, factors: 0 factors are key; exactly one is." },
        { "DesignFactorKey", "\"key\": \"width\"", "\"key\": \"hand width\"", "t.json, factors[1].key: \"hand width\" is not a key" },
        { "DesignFactorTwice", "\"key\": \"width\"", "\"key\": \"slope\"", "t.json, factors[1].key: the factor \"slope\" is there already" },
        { "DesignRangeShort", "[0.6, 0.4]", "[0.6]", "t.json, factors[1].range: 1 values; at least 2 are needed." },
        { "DesignRangeTwice", "[0.6, 0.4]", "[0.6, 0.4, 0.6]", "t.json, factors[1].range: a value is there twice" },
        { "DesignRangeMixed", "[0.6, 0.4]", "[0.6, \"narrow\", 0.4]", "t.json, factors[1].range: numbers and words are mixed" },
        { "DesignRangeOrder", "[0.6, 0.4]", "[0.6, 0.2, 0.4]", "t.json, factors[1].range: the numbers go up and down" },
        { "DesignUnitMissing", "\"unit\": \"m\", ", "", "t.json, factors[1].unit: numbers need a unit. Allowed: s, m, count, deg." },
        { "DesignUnitTooMuch", "\"role\": \"key\",", "\"role\": \"key\", \"unit\": \"m\",", "t.json, factors[0].unit: words and doses take no unit" },
        { "DesignEasiest", "\"width\": 0.6}, \"demands\": [] }", "\"width\": 0.6}, \"demands\": [\"inversion\"] }", "t.json, levels[0].demands: the easiest level asks inversion" },
        { "DesignWithoutPosture", ", \"posture\": \"front-support\"", "", "t.json, levels: a static balance shows at least one level by a posture" },
        { "DesignSettingUnknown", "{\"slope\": \"wall\", \"width\": 0.6}", "{\"slope\": \"wall\", \"width\": 0.6, \"eyes\": \"open\"}", "t.json, levels[0].at.eyes: the grid has no such factor. Allowed: slope, width." },
        { "DesignSettingOutside", "{\"slope\": \"wall\"", "{\"slope\": \"roof\"", "t.json, levels[0].at.slope: roof is not in the factor's range. Allowed: wall, bench, floor." },
        { "DesignSettingMissing", "{\"slope\": \"wall\", \"width\": 0.6}", "{\"slope\": \"wall\"}", "t.json, levels[0].at: the level does not stand on the factor \"width\". Allowed: 0.6, 0.4." },
        { "DesignPosture", "\"posture\": \"front-support\" },", "\"posture\": \"flying\" },", "t.json, levels[2].posture: the library has no posture \"flying\"" },
        { "DesignDemandUnsaid", "[\"handWeight\"], \"posture\": \"front-support\" },", "[], \"posture\": \"front-support\" },", "t.json, levels[2].demands: the posture front-support shows what the level does not say: handWeight." },
        { "DesignDoseOutside", "{\"holdS\": 10}", "{\"holdS\": 601}", "t.json, levels[3].dose: 601 is outside; more than 0 and at most 600 is allowed." },
        { "DesignDoseNotWhole", "{\"holdS\": 10}", "{\"repetitionsCount\": 2.5}", "t.json, levels[3].dose: 2.5 repetitions; a whole number is allowed." },
        { "DesignDoseNotInGrid", "{\"holdS\": 10}", "{\"distanceM\": 2}", "t.json, levels[3].dose: the dose distanceM is no row of the factor grid. Allowed: holdS." },
        { "DesignLevelsAlike", "\"slope\": \"bench\"", "\"slope\": \"wall\"", "t.json, levels[1]: levels 1 and 2 are the same" },
        { "DesignLevelLeaps", "{\"holdS\": 5}, \"at\": {\"slope\": \"bench\", \"width\": 0.6}", "{\"holdS\": 3}, \"at\": {\"slope\": \"bench\", \"width\": 0.4}", "t.json, levels[1]: from level 1 to 2 these move: slope, width, holdS. At most 2" },
        { "DesignOneSentence", "off the ground like a bridge.", "off the ground. Be a bridge.", "t.json, words.en.purpose: one sentence with its point is allowed here" },
        { "DesignCaution", "\"Rest on the knees.\"", "\"\"", "t.json, words.en.caution: a caution is needed, because levels ask handWeight." },
        { "DesignErrors", "{ \"seen\": \"The hips rise.\", \"cause\": \"The shoulders are behind the hands.\", \"question\": \"Where are your shoulders?\" }", "", "t.json, words.en.errors: 1 errors; at least 2 are needed." },
        { "DesignTooLong", "My body is one line.", "My supercalifragilistic bodyoverallandthroughoutfromendtoend isonecontinuousunbrokenline.", "t.json, words.en.cues[1]: 89 characters; at most 80 are allowed." },
        { "DesignCueCount", ", \"My arms are long.\"", "", "t.json, words.en.cues: 2 cues; 3 to 5 are allowed." },
        { "DesignCueTwice", "\"My arms are long.\"", "\"my body is  one line.\"", "t.json, words.en.cues[2]: this cue is there already" },
        { "DesignCueWords", "My body is one line.", "My body is one long line from head to heels.", "t.json, words.en.cues[1]: 10 words; at most 9 are allowed." },
        { "DesignCueNegative", "My body is one line.", "I don't bend my body.", "t.json, words.en.cues[1]: \"don't\" says what is not to be" },
        { "DesignCueHidden", "My body is one line.", "I concentrate on my body.", "t.json, words.en.cues[1]: \"concentrate\" happens where nobody can check it" },
        { "DesignFactorWords", ", \"floor\": \"the floor\"", "", "t.json, words.en.factors.slope.values.floor: a name is needed here." },
        { "DesignWordsTooMuch", "\"width\": { \"name\": \"Between the hands\" }", "\"width\": { \"name\": \"Between the hands\" }, \"eyes\": { \"name\": \"Eyes\" }", "t.json, words.en.factors.eyes: the grid has nothing of this key. Allowed: slope, width." },
        { "DesignStep", "\"people\": { \"sight\": \"A partner speaks.\" }", "\"people\": {}", "t.json, words.en.adaptations.people: at least one adaptation is needed here, by need. Allowed: seated," },
        { "DesignDiagnosis", "A mat apart.", "A mat apart for pupils with autism.", "t.json, words.en.adaptations.space.calm: \"autism\" is a diagnosis" },
        { "DesignVague", "My body is one line.", "My body moves properly.", "t.json, words.en.cues[1]: \"properly\" is vague: it takes for granted" },
        { "DesignQuestionMark", "Where are your shoulders?", "Where are your shoulders.", "t.json, words.en.errors[1].question: a question ends with a question mark." },
        { "DesignQuestionLong", "Where are your shoulders?", "Where are your shoulders now that you are up in the air and I am looking at you from here?", "t.json, words.en.errors[1].question: 20 words; at most 18 are allowed in a question." },
        { "DesignQuestionClosed", "Where are your shoulders?", "Are your shoulders over your hands?", "t.json, words.en.errors[1].question: this can be answered with yes or no." },
        { "DesignQuestionLevel", "Where are your shoulders?", "What about an easier one?", "t.json, words.en.errors[1].question: \"easier\" gives a level" },
        { "DesignQuestionTells", "Where are your shoulders?", "Where should your shoulders be?", "t.json, words.en.errors[1].question: \"should\" gives the answer" },
        { "DesignPrerequisiteUnknown", "\"prerequisites\": []", "\"prerequisites\": [\"019ba208-9999-7ab8-b19d-5620b22b855e\"]", "t.json, prerequisites[0]: no task of the folder has the id 019ba208-9999" },
        { "DesignPrerequisiteLoops", "\"prerequisites\": []", $"\"prerequisites\": [\"{SampleTask.Id}\"]", $"t.json, prerequisites[0]: {SampleTask.Id} leads back to this task" },
        { "DesignPartsDiffer", ", \"Mis brazos están largos.\"", ", \"Mis brazos están largos.\", \"Respiro.\"", "t.json, words.es.cues: \"en\" has 3 of these and here are 4" },
        { "DesignNumbersDiffer", "\"Manos en un banco\"", "\"Manos en un banco de 0,5 m\"", "t.json, words.es.levels[1]: \"en\" has the numbers \"\" here and this language \"0.5\"" },
        { "DesignPartMissing", "\"sight\": \"Una pareja habla.\"", "\"hearing\": \"Una pareja habla.\"", "t.json, words.es.adaptations.people.sight: this part is in \"en\" and missing here." },
        { "DesignPartExtra", "\"sight\": \"Una pareja habla.\"", "\"sight\": \"Una pareja habla.\", \"hearing\": \"Una pareja muestra.\"", "t.json, words.es.adaptations.people.hearing: this part is here and missing in \"en\"." },
        { "DesignWithoutWords", "\"words\": {", "\"other\": {", "t.json, words: the task has no words in any language" },
    };

    [Fact]
    public void Of_AGoodFile_FindsNothing() => Assert.Empty(Said(("t.json", SampleTask.Text)));

    [Theory]
    [MemberData(nameof(Spoilt))]
    public void Of_OnePartSpoilt_SaysFilePartAndWhatIsAllowed(string rule, string right, string wrong, string sentence)
    {
        Assert.Contains(right, SampleTask.Text);
        var findings = Check(("t.json", SampleTask.Text.Replace(right, wrong)));
        Assert.Contains(findings, f => f.Sentence(English).StartsWith(sentence, StringComparison.Ordinal));
        Assert.All(findings, f => Assert.StartsWith("t.json", f.Sentence(CultureInfo.GetCultureInfo("es"))));
        // Rules_OfTheChecker_EachHaveABadFile counts these names: it must be that rule that spoke.
        Assert.Contains(findings, f => f.Key == rule);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(7)]
    public void Of_FewerOrMoreLevels_SaysHowManyAreAllowed(int count)
    {
        var design = DesignFile.Read("t.json", SampleTask.Text).Design!;
        var levels = Enumerable.Range(0, count).Select(i => design.Levels[i % 4] with { Id = new Guid(i + 1, 0, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 0) }).ToList();
        var words = design.Words.ToDictionary(w => w.Key, w => w.Value with { Levels = [.. levels.Select((_, i) => $"A {i}")] });
        Assert.Contains(
            $"t.json, levels: {count} levels; 4 to 6 are allowed.", Said(("t.json", DesignFile.Write(design with { Levels = levels, Words = words }))));
    }

    [Fact]
    public void Of_TwoTasksWithOneId_SaysBothPlaces() => Assert.Contains(
        $"u.json, id: the id {SampleTask.Id} is already used at t.json, id; each is allowed once.", Said(("t.json", SampleTask.Text), ("u.json", SampleTask.Text)));

    [Fact]
    public void Of_PrerequisitesThatLoop_SaysItForEachOfThem()
    {
        var one = SampleTask.Text.Replace("\"prerequisites\": []", $"\"prerequisites\": [\"{Second}\"]");
        var other = Other().Replace("\"prerequisites\": []", $"\"prerequisites\": [\"{SampleTask.Id}\"]");
        Assert.Equal(
            [$"t.json, prerequisites[0]: {Second} leads back to this task", $"u.json, prerequisites[0]: {SampleTask.Id} leads back to this task"],
            Said(("t.json", one), ("u.json", other)).Select(s => s.Split(';')[0]));
    }

    [Fact]
    public void Of_APrerequisiteThatIsThere_FindsNothing() => Assert.Empty(
        Said(("t.json", SampleTask.Text), ("u.json", Other().Replace("\"prerequisites\": []", $"\"prerequisites\": [\"{SampleTask.Id}\"]"))));

    [Fact]
    public void Of_ATaskThatLacksALanguageOfTheOthers_SaysWhich()
    {
        var lacking = DesignFile.Read("u.json", Other()).Design!;
        lacking = lacking with { Words = lacking.Words.Where(w => w.Key == "en").ToDictionary() };
        Assert.Equal(
            ["u.json, words.es: the task has no words in \"es\", which others have. Needed: en, es."],
            Said(("t.json", SampleTask.Text), ("u.json", DesignFile.Write(lacking))));
    }

    [Fact]
    public void Of_WordsWithoutFacts_SaysWhatIsMissing()
    {
        var words = DesignFile.WriteWords(DesignFile.Read("t.json", SampleTask.Text).Design!.Words["es"]);
        Assert.Equal(["es/tasks/t.json: these words belong to tasks/t.json, which is not there."], Said(("es/tasks/t.json", words)));
    }

    [Fact]
    public void Of_WordsInAFileOfTheirOwn_SaysThatFile()
    {
        var design = DesignFile.Read("t.json", SampleTask.Text).Design!;
        var spoilt = DesignFile.WriteWords(design.Words["en"]).Replace("My body is one line.", "My body is perfect.");
        Assert.StartsWith("en/tasks/t.json, cues[1]: \"perfect\" is vague", Assert.Single(Said(
            ("tasks/t.json", DesignFile.WriteFacts(design)), ("en/tasks/t.json", spoilt), ("es/tasks/t.json", DesignFile.WriteWords(design.Words["es"])))));
    }

    [Theory]
    [InlineData("Mi cuerpo es una línea.", "Mi cuerpo hace una sola línea muy larga de cabeza a talones.", "t.json, words.es.cues[1]: 12 words; at most 11")]
    [InlineData("Mi cuerpo es una línea.", "Mi cuerpo no se dobla.", "t.json, words.es.cues[1]: \"no\" says what is not to be")]
    [InlineData("Mi cuerpo es una línea.", "Hago bien la línea.", "t.json, words.es.cues[1]: \"bien\" is vague: dice que gusta")]
    [InlineData("Mi cuerpo es una línea.", "Pienso: intento ser una línea.", "t.json, words.es.cues[1]: \"pienso\" happens where")]
    [InlineData("¿Dónde están tus hombros?", "¿Están tus hombros encima?", "t.json, words.es.errors[1].question: this can be answered with yes or no")]
    [InlineData("¿Dónde están tus hombros?", "¿Qué tal un nivel más fácil?", "t.json, words.es.errors[1].question: \"nivel\" gives a level")]
    [InlineData("¿Dónde están tus hombros?", "¿Dónde debes poner los hombros?", "t.json, words.es.errors[1].question: \"debes\" gives the answer")]
    [InlineData("Una colchoneta aparte.", "Una colchoneta aparte para quien tiene asma.", "t.json, words.es.adaptations.space.calm: \"asma\" is a diagnosis")]
    public void Of_SpanishWordsSpoilt_KeepsToItsOwnLists(string right, string wrong, string sentence) => Assert.StartsWith(
        sentence, Assert.Single(Said(("t.json", SampleTask.Text.Replace(right, wrong)))));

    [Theory]
    [InlineData("My body is one line.", "My goodness, one line.")]
    [InlineData("My body is one line.", "My knot is one line.")]
    public void Of_AWordInsideAnother_IsNotMeant(string right, string other) => Assert.Empty(Said(("t.json", SampleTask.Text.Replace(right, other))));

    [Fact]
    public void Rules_OfTheChecker_EachHaveABadFile()
    {
        var sentences = new ResourceManager(typeof(FindingWords)).GetResourceSet(CultureInfo.InvariantCulture, createIfNotExists: true, tryParents: true)!
            .Cast<DictionaryEntry>().Select(e => (string)e.Key).Where(key => key.StartsWith("Design", StringComparison.Ordinal));
        // With a test of their own, above.
        string[] elsewhere = ["DesignIdTwice", "DesignLanguageMissing", "DesignLevelCount", "DesignWordsWithoutFacts"];
        Assert.Equal(sentences.Order(StringComparer.Ordinal), Spoilt.Select(row => row.Data.Item1).Concat(elsewhere).Distinct().Order(StringComparer.Ordinal));
    }

    // The same task under ids of its own.
    private static string Other() => SampleTask.Text.Replace("019ba208-1f9", "019ba208-2f9");

    private static IReadOnlyList<Finding> Check(params (string Path, string Text)[] files) => DesignCheck.Of(TaskFolder.Read(files.ToDictionary(f => f.Path, f => f.Text)));

    private static IEnumerable<string> Said(params (string Path, string Text)[] files) => Check(files).Select(f => f.Sentence(English));
}
