using System.Globalization;
using Slantwise.Desk.Pages.Library;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks.Designs;

namespace Slantwise.Surface.Tests.Desk.Library;

public sealed class LibraryFilterTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es");

    [Fact]
    public void Fits_NothingAsked_IsEveryTaskOfTheLibrary() => Assert.Equal(79, Found("", English).Count);

    [Theory]
    [InlineData("?words=ONE%20foot", "en", "one-foot-balance")]
    [InlineData("?words=equilibrio%20sobre%20un%20pie", "es", "one-foot-balance")]
    [InlineData("?words=estaticos%20PIE", "es", "one-foot-balance")]
    public void Fits_Words_AreFoundWhateverTheirCaseAndAccents(string query, string language, string key) =>
        Assert.Contains(Found(query, CultureInfo.GetCultureInfo(language)), e => e.Key == key);

    [Fact]
    public void Fits_Words_AllHaveToBeThere()
    {
        Assert.Empty(Found("?words=foot%20zeppelin", English));
        Assert.NotEmpty(Found("?words=foot", English));
    }

    [Fact]
    public void Fits_WithoutADemand_NoLevelAsksIt()
    {
        var found = Found("?without=Inversion&without=HandWeight", English);
        Assert.NotEmpty(found);
        // By the levels themselves, not by the task's sum of them.
        Assert.DoesNotContain(found.SelectMany(e => e.Design.Levels), l => l.Needs.Contains(BodyDemand.Inversion) || l.Needs.Contains(BodyDemand.HandWeight));
        var left = LibraryShelf.Of(English).Except(found);
        Assert.All(left, e => Assert.Contains(e.Design.Levels, l => l.Needs.Contains(BodyDemand.Inversion) || l.Needs.Contains(BodyDemand.HandWeight)));
    }

    [Fact]
    public void Fits_ByPolicy_LeavesOutWhatItForbids()
    {
        var strict = new SafetyPolicy { Rolls = PolicyChoice.NotAllowed };
        var found = Found("?policy=1", English, strict);
        Assert.DoesNotContain(found, e => e.Key == "forward-roll");
        Assert.Contains(found, e => e.Key == "one-foot-balance");
        Assert.Contains(Found("?policy=1", English, new SafetyPolicy()), e => e.Key == "forward-roll");
    }

    [Fact]
    public void Fits_PatternNeedAndFigure_AllHold()
    {
        Assert.All(Found("?pattern=RopeJumping", English), e => Assert.Equal(MovementPattern.RopeJumping, e.Design.Pattern));
        Assert.All(Found("?needs=Rope", English), e => Assert.Equal(LibraryNeed.Rope, LibraryNeeds.Of(e)));
        Assert.All(Found("?figure=1", Spanish), e => Assert.Contains(e.Design.Levels, l => l.Posture is not null));
        Assert.Empty(Found("?pattern=RopeJumping&needs=Ball", English));
    }

    [Fact]
    public void Of_UnknownWords_ArePassedOver()
    {
        var filter = LibraryFilter.Of("?pattern=99&needs=Trampoline&without=Thinking&policy=yes&page=3");
        Assert.True(filter.IsEmpty);
    }

    private static List<LibraryEntry> Found(string query, CultureInfo language, SafetyPolicy? policy = null) =>
        [.. LibraryShelf.Of(language).Where(e => LibraryFilter.Of(query).Fits(e, policy ?? new SafetyPolicy(), language))];
}
