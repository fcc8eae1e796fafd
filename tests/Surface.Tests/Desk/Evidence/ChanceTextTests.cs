using System.Globalization;
using System.Text.RegularExpressions;
using Slantwise.Desk.Pages.Evidence;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Statistics.Predictions;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Records.Evidence.Foresight;
using Slantwise.Records.Evidence.Levels;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed partial class ChanceTextTests : IDisposable
{
    private readonly (CultureInfo Numbers, CultureInfo Words) _before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);

    public ChanceTextTests() => Speak("en-GB");

    public void Dispose() => (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = _before;

    [Theory]
    [InlineData(.64, .42, .83, false, "about 6, likely 4 to 9", false)]
    [InlineData(.64, .42, .83, true, "about 6, likely 4 to 9", true)]
    [InlineData(.5, .12, .88, false, "not enough tries yet", true)]
    public void Of_AChance_SaysTenthsOrThatThereAreNotEnoughTries(double about, double low, double high, bool isAssumed, string words, bool isMuted)
    {
        var chance = new LevelChance(about, low, high, isAssumed, 5);
        Assert.Equal(words, ChanceText.Of(chance));
        Assert.Equal(isMuted, ChanceText.IsMuted(chance));
    }

    [Fact]
    public void OfMiddle_AnyChance_IsASentenceThatOwnsUpToWhatIsAssumed()
    {
        Assert.Equal("Of ten tries by a pupil in the middle of the class, about 6 would be reached; likely 4 to 9.", ChanceText.OfMiddle(new(.64, .42, .83, false, 5)));
        Assert.Contains("not enough tries yet", ChanceText.OfMiddle(new(.5, .1, .9, false, 5)));
        Assert.Contains("not enough tries yet", ChanceText.OfMiddle(null));
    }

    [Fact]
    public void Dots_MostlyAssumed_AreMutedAndCarryTheirWords()
    {
        var scene = ChanceText.Dots(new(.64, .42, .83, true, 5), "About 6 of 10.");
        Assert.DoesNotContain(scene.Shapes, s => s.Tone == Tone.Accent);
        Assert.Equal("About 6 of 10.", scene.Description);
    }

    [Fact]
    public void Of_ADifference_SaysTheSideFirstAndNothingWhereTheRangeIsTooWide()
    {
        Assert.Equal("This one is harder: about 3, likely 2 to 4 of 10", ChanceText.Of(new LevelDifference(.27, .2, .37, false, true)));
        Assert.Equal("This one is easier: about 7, likely 6 to 9 of 10", ChanceText.Of(new LevelDifference(.73, .62, .82, false, true)));
        Assert.Equal("This one is harder: about 4, likely 2 to just under 5 of 10", ChanceText.Of(new LevelDifference(.36, .25, .47, false, true)));
        Assert.Equal("This one is easier: about 6, likely just over 5 to 8 of 10", ChanceText.Of(new LevelDifference(.64, .53, .75, false, true)));
        Assert.StartsWith("Cannot be told apart", ChanceText.Of(new LevelDifference(.45, .3, .6, false, true)));
        Assert.Equal("Not enough tries yet", ChanceText.Of(new LevelDifference(.45, .1, .8, false, true)));
        Assert.Equal("compared by assumption alone", ChanceText.Mind(new LevelDifference(.45, .3, .6, true, false)));
        Assert.Equal("mostly assumption", ChanceText.Mind(new LevelDifference(.45, .3, .6, true, true)));
        Assert.Equal("", ChanceText.Mind(new LevelDifference(.45, .3, .6, false, true)));
    }

    [Fact]
    public void Of_ABand_IsANumberOfPupilsInsideItsRange()
    {
        Assert.Equal("likely for about 11 of 24", ChanceText.Of(new LevelBand(ReachBand.Usual, 24, 11.2, 8, 15, 1)));
        Assert.Equal("8 to 15 could; reached in 60 to 90 of 100 tries", ChanceText.Range(new LevelBand(ReachBand.Usual, 24, 11.2, 8, 15, 1)));
        // An expected number can round to outside of a range of whole pupils.
        Assert.Equal("likely for about 0 of 24", ChanceText.Of(new LevelBand(ReachBand.Usual, 24, .6, 0, 0, .1)));
        Assert.Equal("nothing to say before the first try", ChanceText.Of((LevelBand?)null));
    }

    [Theory]
    [InlineData(5, .9, .8, "Says more than was to be expected: where that was 5 of 10, likely 5 to 8.")]
    [InlineData(5, .9, .2, "Not enough sets yet to tell this pupil's predictions from the class's.")]
    [InlineData(2, .9, .8, "Whether more or less is said than was to be expected cannot be told yet: where that was 5 of 10, likely 5 to 8.")]
    public void Predicts_APupil_NamesASideOnlyWithSetsEnough(int sets, double over, double data, string words)
    {
        var bias = new PupilBias(.7, .4, .05, 1.35, over, data, sets, sets * 5);
        Assert.Equal(words, ChanceText.Predicts(new PupilForesight(Guid.NewGuid(), "Ann", sets, bias, [])));
    }

    [Fact]
    public void Say_EveryKeyNamedInAPage_HasWordsInBothLanguages()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        var keys = Directory.EnumerateFiles(Path.Combine(folder.FullName, "src", "Desk", "Pages", "Evidence"))
            .SelectMany(file => Key().Matches(File.ReadAllText(file)).Select(m => (Name: m.Groups["key"].Value, IsCounted: m.Groups["count"].Success)))
            .SelectMany(k => k.IsCounted ? new[] { k.Name + "One", k.Name + "Many" } : [k.Name])
            .Concat(Enum.GetNames<LevelSide>().Select(n => "Side" + n).Concat(["SideHarderNear", "SideEasierNear"])).Concat(Enum.GetNames<BiasSign>().Select(n => "Predicts" + n))
            .Distinct().ToList();
        Assert.True(keys.Count > 40, $"Only {keys.Count} keys were found: the pages are no longer read.");
        foreach (var language in new[] { "en-GB", "es-ES" }) Assert.All(keys, k => Assert.NotEmpty(ChanceWords.Text(k, CultureInfo.GetCultureInfo(language))));
        Assert.Throws<InvalidOperationException>(() => ChanceWords.Say("NoSuchKey"));
    }

    [GeneratedRegex("""\b(?:C|ChanceWords)\.Say(?<count>Count)?\("(?<key>\w+)"(?! \+)""")]
    private static partial Regex Key();

    private static void Speak(string language) =>
        (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (CultureInfo.GetCultureInfo(language), CultureInfo.GetCultureInfo(language));
}
