using System.Globalization;
using System.Text.RegularExpressions;
using Slantwise.Desk.Pages.Library;

namespace Slantwise.Surface.Tests.Desk.Library;

public sealed partial class LibraryNeedsTests
{
    private static readonly IReadOnlyList<LibraryEntry> All = LibraryShelf.Of(CultureInfo.GetCultureInfo("en"));

    // The table is a person's reading of the levels; this is the other way round, by their words.
    [Fact]
    public void Of_TaskWhoseLevelsNameAThing_IsNotSaidToTakeNothing()
    {
        // The bench of a pair is one of the two.
        var wrong = All.Where(e => e.Key != "pair-bench" && LibraryNeeds.Of(e) is not LibraryNeed.More && e.Words.Levels.Any(l => Thing().IsMatch(l))).Select(e => e.Key)
            .Concat(All.Where(e => LibraryNeeds.Of(e) is LibraryNeed.Floor or LibraryNeed.Mat && e.Words.Levels.Any(l => BallOrRope().IsMatch(l))).Select(e => e.Key));
        Assert.Empty(wrong);
    }

    [Fact]
    public void Of_Floor_TakesNoMat() =>
        Assert.DoesNotContain(All, e => LibraryNeeds.Of(e) == LibraryNeed.Floor && e.Design.Mats.MatCount > 0);

    [Fact]
    public void Of_EachNeed_FitsSomeTask() =>
        Assert.Equal(Enum.GetValues<LibraryNeed>(), All.Select(LibraryNeeds.Of).Distinct().Order());

    [GeneratedRegex(@"\b(bench|box|slope|hoops?|bars?|sticks?|bat|paddle|disc|tee|balloon|ring)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Thing();

    [GeneratedRegex(@"\b(ball|rope)\b", RegexOptions.IgnoreCase)]
    private static partial Regex BallOrRope();
}
