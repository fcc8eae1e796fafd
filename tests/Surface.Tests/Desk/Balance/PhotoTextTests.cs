using System.Globalization;
using System.Text.RegularExpressions;
using Slantwise.Desk.Pages.Balance;
using Slantwise.Desk.Words;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Surface.Tests.Desk.Balance;

public sealed partial class PhotoTextTests
{
    private static readonly CultureInfo English = new("en-GB");

    [Theory]
    [InlineData("en-GB")]
    [InlineData("es-ES")]
    public void Title_EveryStepThereCanBe_HasWords(string language)
    {
        CultureInfo.CurrentUICulture = CultureInfo.CurrentCulture = new(language);
        var session = new PhotoSession();
        session.AddSecond();
        var text = new PhotoText(session);
        foreach (var view in session.Views)
        {
            view.SetArmsApart(true);
            view.SetLegsApart(true);
            view.SetBackBent(true);
            view.SetLevel(LevelBasis.Upright);
            foreach (var touch in Enum.GetValues<ContactPart>().SelectMany(view.TouchesOf)) view.SetTouching(touch, true);
            Assert.All(view.Steps, step => Assert.NotEmpty(text.Title(step, view) + PhotoText.Hint(step, view)));
            view.SetArmsApart(false);
            view.SetLegsApart(false);
            Assert.All(Enum.GetValues<ContactPart>().SelectMany(view.TouchesOf), touch => Assert.NotEmpty(text.Touch(touch, view)));
        }
    }

    [Fact]
    public void Say_EveryKeyMadeOfAKind_HasWords()
    {
        string[] keys =
        [
            .. All<MarkedVerdict>("Verdict"), .. All<MarkedNeed>("Need"), .. All<MarkedCaution>("Caution"), .. All<LevelBasis>("Level"),
            .. PhotoSample.Keys.Select(k => $"Sample{k}"),
            .. new[] { Landmark.Heel, Landmark.Toe, Landmark.Wrist, Landmark.Fingertip, Landmark.Ankle }.SelectMany(l => new[] { $"Over{l}", $"Over{l}Both" }),
            "SegmentShoulderHip", "SegmentShoulderElbow", "SegmentElbowWrist", "SegmentHipKnee", "SegmentKneeAnkle",
        ];
        Assert.All(keys, key => Assert.NotEmpty(PhotoWords.Text(key, English)));
    }

    [Fact]
    public void Say_EveryKeyNamedInAPage_HasWords()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        var keys = Directory.EnumerateFiles(Path.Combine(folder.FullName, "src/Desk/Pages/Balance"), "Photo*")
            .SelectMany(file => Call().Matches(File.ReadAllText(file))).SelectMany(call => Literal().Matches(call.Value)).Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.True(keys.Count > 60, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.All(keys, key => Assert.NotEmpty(PhotoWords.Text(key, English)));
    }

    [Fact]
    public void Margin_OfADrawnHandstand_SaysWordsBeforeNumbers()
    {
        CultureInfo.CurrentUICulture = CultureInfo.CurrentCulture = English;
        var session = new PhotoSession();
        var view = PhotoSampleMarks.Marked("Handstand");
        var balance = session.BalanceOf(view)!;
        var text = new PhotoText(session);
        // By hand from the posture: the nearer end is .042 away, the error 1.96 · .022.
        Assert.Equal("The line of gravity falls 4 hundredths of a stature inside the base, give or take 4. It would tip first over: heels of the hands.", text.Margin(balance, view));
        session.AgeYearCount = 10;
        // At 10 years 138.3 cm: .042 of it.
        Assert.StartsWith("The line of gravity falls 6 cm inside the base, give or take 6.", text.Margin(balance, view));
        Assert.Equal("Chance that it is really inside: more than 99 of 100.", PhotoText.Chance(.9991));
        Assert.Equal("Chance that it is really inside: less than 1 of 100.", PhotoText.Chance(0));
        Assert.Empty(text.Shares(balance, view));
    }

    private static IEnumerable<string> All<T>(string start)
        where T : struct, Enum => Enum.GetNames<T>().Select(name => start + name);

    // A call whose key is written out: keys made of a kind are checked above.
    [GeneratedRegex(@"\b(?:P|PhotoWords)\.Say\((?:[^""()$]|\([^()]*\))*""[A-Za-z]+""(?:\s*:\s*""[A-Za-z]+"")*")]
    private static partial Regex Call();

    [GeneratedRegex(@"""([A-Z][A-Za-z]+)""")]
    private static partial Regex Literal();
}
