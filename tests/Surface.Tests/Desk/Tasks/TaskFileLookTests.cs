using System.Globalization;
using Slantwise.Desk.Pages.Library;
using Slantwise.Desk.Pages.Tasks;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Surface.Tests.Desk.Tasks;

public sealed class TaskFileLookTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    private static readonly Guid School = Guid.CreateVersion7();

    public static TheoryData<string> Keys => [.. LibraryShelf.Of(English).Select(e => e.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Read_TaskOfTheLibrarySavedAsAFile_CanBeAddedWithNothingToSay(string key)
    {
        var entry = LibraryShelf.Find(key, English)!;
        var look = TaskFileLook.Read(key + ".json", DesignFile.Write(entry.Design), School, CultureInfo.GetCultureInfo("es"), []);
        Assert.Empty(look.Findings);
        Assert.True(look.CanAdd);
        Assert.Equivalent(entry.Design.ToTask("es", School), look.Task, strict: true);
    }

    [Fact]
    public void Read_TaskThatTheSchoolHas_IsNotWrittenOver()
    {
        var task = OneFoot.Design.ToTask("en", School) with { Name = "Our own storks" };
        var look = TaskFileLook.Read("a.json", DesignFile.Write(OneFoot.Design), School, English, [task]);
        Assert.Equal("Our own storks", look.Same!.Name);
        Assert.False(look.CanAdd);
    }

    [Fact]
    public void Read_LevelOfAnotherTask_IsNotTaken()
    {
        var other = OneFoot.Design.ToTask("en", School) with { Id = Guid.CreateVersion7(), Name = "Storks" };
        var look = TaskFileLook.Read("a.json", DesignFile.Write(OneFoot.Design), School, English, [other]);
        Assert.Equal("Storks", look.WithSameLevel);
        Assert.False(look.CanAdd);
        // Nor of one that the school could still take from the library.
        look = TaskFileLook.Read("a.json", DesignFile.Write(OneFoot.Design with { Id = other.Id }), School, English, []);
        Assert.Equal(OneFoot.Words.Name, look.WithSameLevel);
        Assert.False(look.CanAdd);
    }

    [Fact]
    public void Read_ChangedSoThatTwoLevelsAreAlike_SaysSoAndRefuses()
    {
        var levels = OneFoot.Design.Levels.ToList();
        levels[1] = levels[0] with { Id = levels[1].Id };
        var look = TaskFileLook.Read("a.json", DesignFile.Write(OneFoot.Design with { Levels = levels }), School, English, []);
        Assert.Contains(look.Findings, f => f.Key == "DesignLevelsAlike");
        Assert.True(look.Findings[0].IsRefused);
        Assert.False(look.CanAdd);
        Assert.NotNull(look.Whole);
    }

    [Fact]
    public void Read_TasksOfAColleagueThatItLeansOn_AreNoReasonToRefuse()
    {
        var words = OneFoot.Design.Words.Where(w => w.Key == "en").ToDictionary();
        var design = OneFoot.Design with { Prerequisites = [Guid.CreateVersion7()], Words = words };
        Assert.True(TaskFileLook.Read("a.json", DesignFile.Write(design), School, English, []).CanAdd);
    }

    [Fact]
    public void Read_ShortForm_CanBeAddedWithoutAGrid()
    {
        var task = OneFoot.Design.ToTask("en", School);
        var look = TaskFileLook.Read("a.json", TaskFile.Write(task), School, English, []);
        Assert.Null(look.Whole);
        Assert.True(look.CanAdd);
        Assert.Equivalent(task, look.Task, strict: true);
    }

    [Theory]
    [InlineData("")]
    [InlineData("nonsense")]
    [InlineData("{\"format\":\"slantwise-task/9\"}")]
    [InlineData("[1, 2]")]
    public void Read_NoTask_SaysWhatIsWrong(string text)
    {
        var look = TaskFileLook.Read("a.json", text, School, English, []);
        Assert.False(look.CanAdd);
        Assert.Contains("a.json", look.Findings[0].Sentence(English));
    }

    private static LibraryEntry OneFoot => LibraryShelf.Find("one-foot-balance", English)!;
}
