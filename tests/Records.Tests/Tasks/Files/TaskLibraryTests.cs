using System.Globalization;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Checks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tests.Tasks.Files;

public sealed class TaskLibraryTests
{
    private static readonly Guid School = new("019ba208-0000-7000-8000-000000000001");
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");

    public static TheoryData<string> Languages => [.. TaskLibrary.Languages];

    [Fact]
    public void Languages_InTheLibrary_AreEnglishThenSpanish() => Assert.Equal(["en", "es"], TaskLibrary.Languages);

    [Fact]
    public void DesignCheck_OfEveryTask_FindsNothing() =>
        Assert.Empty(DesignCheck.Of(TaskLibrary.Readings).Select(f => f.Sentence(English)));

    [Theory]
    [MemberData(nameof(Languages))]
    public void Read_EveryFile_HasATaskAndNothingToSay(string language)
    {
        var readings = TaskLibrary.Read(CultureInfo.GetCultureInfo(language), School);
        Assert.Equal(TaskLibrary.Designs.Count, readings.Count);
        Assert.All(readings, r =>
        {
            Assert.Empty(r.Findings.Select(f => f.Sentence(English)));
            Assert.NotNull(r.Task);
            Assert.Equal(School, r.Task.SchoolId);
            // What the desk would say while it is edited.
            Assert.Empty(Records.Checks.TaskCheck.Of(r.Task).Select(f => f.Sentence(English)));
        });
    }

    [Fact]
    public void Read_TheFirstSixTasks_KeepTheIdsAndLevelsThatSheetsWerePrintedWith()
    {
        // From the library as it was before its second format, read off those files.
        var tasks = TaskLibrary.Read(English, School).ToDictionary(r => r.FileName, r => r.Task!);
        Assert.Equal(new Guid("019ba208-1f81-72c8-ab5a-d8cf3c38fc2f"), tasks["one-foot-balance.json"].Id);
        Assert.Equal(
            [
                ("019ba208-1f94-745b-9a9f-2edc0b9ca147", "Crouch on tiptoe, knees on elbows, hands hovering", 3, "frog-crouch"),
                ("019ba208-1f95-7ccf-8aad-f0ce48ea4781", "Hands flat, lean until the heels lift", 3, "frog-lean"),
                ("019ba208-1f96-760a-9a14-b1b5d5032231", "Hands flat, one foot floats", 2, "frog-one-foot"),
                ("019ba208-1f97-7ab8-b19d-5620b22b855e", "Hands flat, both feet float", 2, "frog-balance"),
                ("019ba208-1f98-76d5-8413-118faa8b1eb4", "Hands flat, both feet float", 5, "frog-balance"),
            ],
            tasks["frog-balance.json"].Levels.Select(l => (l.Id.ToString(), l.Name, (int)l.Dose.Amount, l.Posture!)));
        Assert.Equal(
            ["019ba208-1fa0", "019ba208-1fa1", "019ba208-1fa2", "019ba208-1fa3", "019ba208-1fa4"],
            tasks["target-throw.json"].Levels.Select(l => l.Id.ToString()[..13]));
        Assert.Equal([3m, 5, 5, 7, 7], tasks["target-throw.json"].Levels.Select(l => l.Dose.Amount));
        Assert.Equal(["019ba208-1f9a", "019ba208-1f9b", "019ba208-1f9c", "019ba208-1f9d", "019ba208-1f9e"], tasks["rope-jumping.json"].Levels.Select(l => l.Id.ToString()[..13]));
        Assert.Equal(["arabesque-wall", "arabesque-low", "arabesque-half", "arabesque-hip", "arabesque-arms-forward"], tasks["arabesque.json"].Levels.Select(l => l.Posture));
        Assert.Equal(["tuck-sit-heels", "tuck-sit", "tuck-sit-arms-forward", "v-sit-hands", "v-sit"], tasks["v-sit.json"].Levels.Select(l => l.Posture));
    }

    [Fact]
    public void Designs_OfTheLibrary_PutNoWeightOnAHead() => Assert.All(
        TaskLibrary.Designs, design => Assert.DoesNotContain(BodyDemand.HeadWeight, design.Needs));

    [Fact]
    public void Designs_OfTheLibrary_CoverThePatternsAndSaySomethingForThoseWhoSit()
    {
        Assert.InRange(TaskLibrary.Designs.Count, 70, 200);
        // How many of each the library was asked for; balances on hands among the static ones.
        Assert.All(
            new Dictionary<MovementPattern, int>
            {
                [MovementPattern.StaticBalance] = 22, [MovementPattern.WeightOnHands] = 8, [MovementPattern.Roll] = 7, [MovementPattern.JumpAndLanding] = 8,
                [MovementPattern.RopeJumping] = 5, [MovementPattern.HopAndSkip] = 4, [MovementPattern.Throw] = 6, [MovementPattern.Catch] = 4,
                [MovementPattern.Strike] = 4, [MovementPattern.Dribble] = 3, [MovementPattern.Sequence] = 4,
            },
            least => Assert.True(TaskLibrary.Designs.Count(d => d.Pattern == least.Key) >= least.Value, least.Key.ToString()));
        Assert.All(TaskLibrary.Designs, design => Assert.Contains(design.Words["en"].Adaptations, a => a.Need == FunctionNeed.Seated));
    }

    [Fact]
    public void Designs_OfTheLibrary_EveryIdIsOfVersion7() => Assert.All(
        TaskLibrary.Designs.SelectMany(d => d.Levels.Select(l => l.Id).Prepend(d.Id)), id => Assert.Equal(7, id.Version));

    [Fact]
    public void Read_LanguageWithoutTasks_FallsBackToEnglish() => Assert.Equal(
        TaskLibrary.Read(English, School).Select(r => r.Task!.Name),
        TaskLibrary.Read(CultureInfo.GetCultureInfo("fi"), School).Select(r => r.Task!.Name));

    [Fact]
    public void Write_EveryTaskAsOneFile_ReadsBackTheSame() => Assert.All(TaskLibrary.Designs, design =>
    {
        var reading = DesignFile.Read("one.json", DesignFile.Write(design));
        Assert.Empty(reading.Findings);
        Assert.Equal(DesignFile.Write(design), DesignFile.Write(reading.Design!));
        // As a sheet would take it, too.
        Assert.Equal(TaskFile.Write(design.ToTask("es", School)), TaskFile.Write(reading.Design!.ToTask("es", School)));
    });

    [Fact]
    public void Write_EveryTaskInPieces_ReadsBackTheSame()
    {
        var texts = new Dictionary<string, string>();
        foreach (var reading in TaskLibrary.Readings)
        {
            var file = Path.GetFileName(reading.FileName);
            texts["tasks/" + file] = DesignFile.WriteFacts(reading.Design!);
            foreach (var (language, words) in reading.Design!.Words) texts[$"{language}/tasks/{file}"] = DesignFile.WriteWords(words);
        }
        Assert.Equal(TaskLibrary.Designs.Select(DesignFile.Write), TaskFolder.Read(texts).Select(r => DesignFile.Write(r.Design!)));
    }
}
