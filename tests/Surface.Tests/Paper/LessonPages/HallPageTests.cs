using System.Globalization;
using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Pack;
using Slantwise.Records.Halls;
using Slantwise.Records.Lessons;
using Slantwise.Surface.Tests.Paper.Cards;

namespace Slantwise.Surface.Tests.Paper.LessonPages;

public class HallPageTests
{
    private static readonly SchoolHall Hall = new()
    {
        SchoolId = Guid.Empty, Id = Guid.Empty, Name = "Sports hall", WidthM = 22, DepthM = 13, Things = [new("Stage", 0, 11, 8, 2, true), new("Pillar", 14.6, 5.8, 0.7, 0.7, true)],
    };

    private static LessonHall Laid(int mats, int stations, int? groups = null)
    {
        var start = SpaceProposal.Start(null) with { Stations = [.. Enumerable.Range(1, stations).Select(i => new HallStation($"Place {i}", null))], StationMin = stations > 0 ? 6 : null };
        return new(Hall, SpaceProposal.LaidOut(Hall, start, mats, [new(Guid.Empty, "t", 1.2, FallGround.Posture, 1)]), groups);
    }

    private static LessonRecord Lesson() => CardLessons.ShortLesson() with { };

    [Theory]
    [InlineData(PaperSize.A4, 14, 0, null)]
    [InlineData(PaperSize.A4, 14, 4, 6)]
    [InlineData(PaperSize.Letter, 8, 12, 20)]
    public void Of_AnyLesson_IsOneTidyPage(PaperSize size, int mats, int stations, int? groups)
    {
        var page = HallPage.Of(Lesson(), Laid(mats, stations, groups), CardLessons.Spanish with { Size = size })!;
        // Words stand on the drawing: numbers on mats, letters on signs.
        var texts = page.Shapes.OfType<Text>().ToList();
        Assert.All(texts, t => Assert.True(t.SizePt >= 11 - 1e-9, $"'{t.Content}' is {t.SizePt} pt."));
        Assert.All(texts, t =>
        {
            var room = t.Room();
            Assert.True(room.Left >= 6 && room.Right <= page.WidthMm - 6 && room.Top >= 5 && room.Bottom <= page.HeightMm - 5, $"'{t.Content}' leaves the page: {room}.");
        });
        Assert.All(Enumerable.Range(1, mats), m => Assert.Contains(texts, t => t.Content == $"{m}"));
        Assert.Contains("Colchonetasde1,83×1,22m", page.Run());
    }

    [Fact]
    public void Of_WithStations_PrintsWhoIsWhereWhen()
    {
        var record = Lesson();
        var page = HallPage.Of(record, Laid(9, 3), CardLessons.English)!;
        Assert.Contains("A·Place1(mats1,", page.Run());
        Assert.Contains("Group1Group2Group3", page.Run());
        // As the plan says it; the plan's own tests say when.
        var first = StationPlan.Of(Laid(9, 3).Layout, record.Lesson.Phases, null)!.Rounds[0];
        Assert.Contains($"min{first.StartMin}to{first.EndMin}", page.Run());
    }

    [Theory]
    [InlineData(3, 3, false)]
    [InlineData(12, 40, true)]
    public void Of_MoreRoundsThanRoom_SaysWhatIsLeftOut(int stations, int groups, bool isCut)
    {
        var page = HallPage.Of(Lesson(), Laid(9, stations, groups), CardLessons.English)!;
        Assert.Equal(isCut, page.Run().Contains("Whathadnoroomhere", StringComparison.Ordinal));
        Assert.All(page.Shapes.OfType<Text>(), t => Assert.True(t.Room().Bottom <= page.HeightMm - 5));
    }

    [Fact]
    public void Of_SomethingTooNear_SaysIt()
    {
        var laid = Laid(9, 0);
        var mats = laid.Layout.Mats.ToList();
        mats[0] = mats[0] with { XM = mats[1].XM, YM = mats[1].YM + 0.4 };
        var page = HallPage.Of(Lesson(), laid with { Layout = laid.Layout with { Mats = mats } }, CardLessons.English)!;
        Assert.Contains("Toonearinthisplan", page.Run());
        Assert.Contains("Mat1andmat2:", page.Run());
        Assert.DoesNotContain("Toonearinthisplan", HallPage.Of(Lesson(), laid, CardLessons.English)!.Run());
    }

    [Fact]
    public void Of_NoHallOrNothingInIt_IsNone()
    {
        Assert.Null(HallPage.Of(Lesson(), null, CardLessons.English));
        Assert.Null(HallPage.Of(Lesson(), Laid(0, 0), CardLessons.English));
    }

    [Fact]
    public void Of_ALessonWithAHall_StandsBehindItsLessonPageInThePack()
    {
        var without = LessonPack.Of(Lesson(), LessonPlans.None, CardLessons.English);
        var with = LessonPack.Of(Lesson(), new() { Hall = Laid(6, 0) }, CardLessons.English);
        Assert.Equal(without.Count + 1, with.Count);
        Assert.Contains("Thehall:Sportshall", with[2].Scene.Run());
    }

    // Source: [WCAG22] 1.4.11, 3 to 1 for what has to be told apart; the luminance is that of the printed greys.
    [Fact]
    public void Of_PrintedInGrey_MatsAndSignsStandOut()
    {
        static double Contrast(Tone a, Tone b)
        {
            static double Luminance(Tone tone)
            {
                var hex = PrintColours.HexOf(tone);
                double Part(int at)
                {
                    var value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
                    return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
                }
                return 0.2126 * Part(1) + 0.7152 * Part(3) + 0.0722 * Part(5);
            }
            var (x, y) = (Luminance(a), Luminance(b));
            return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
        }
        // A mat's edge on clear floor, the circle on the floor, a number on a mat, the warning on a mat, a letter on its disc, a thing on the floor.
        Assert.True(Contrast(Tone.Accent, Tone.AccentSoft) >= 3);
        Assert.True(Contrast(Tone.Accent, Tone.Ground) >= 3);
        Assert.True(Contrast(Tone.Ink, Tone.AccentMiddle) >= 4.5);
        Assert.True(Contrast(Tone.Caution, Tone.AccentMiddle) >= 3);
        Assert.True(Contrast(Tone.Ground, Tone.Ink) >= 4.5);
        Assert.True(Contrast(Tone.Muted, Tone.Ground) >= 3);
    }
}
