using Slantwise.Engines.Drawing;

namespace Slantwise.Surface.Tests.Paper.Cards;

/// <summary>What holds of every page that is not a form: words on the page, large enough, apart from each other, from edges of boxes and from drawings.</summary>
internal static class Tidy
{
    // What desk printers cannot reach is at most about 6 mm. Common practice, no source.
    private const double UnreachedMm = 6;
    private const double SlackMm = 0.06;

    public static void Check(Scene page, bool hasWordsOnDrawings = false)
    {
        var texts = page.Shapes.OfType<Text>().Select(t => (Text: t, Room: t.Room())).ToList();
        foreach (var (text, room) in texts)
        {
            Assert.True(text.SizePt >= 11 - 1e-9, $"'{text.Content}' is {text.SizePt} pt.");
            Assert.True(
                room.Left >= UnreachedMm && room.Right <= page.WidthMm - UnreachedMm && room.Top >= UnreachedMm - 1 && room.Bottom <= page.HeightMm - UnreachedMm + 1.5,
                $"'{text.Content}' leaves the page: {room}.");
        }
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = i + 1; j < texts.Count; j++)
            {
                Assert.False(Meets(texts[i].Room, texts[j].Room), $"'{texts[i].Text.Content}' and '{texts[j].Text.Content}' overlap: {texts[i].Room}, {texts[j].Room}.");
            }
        }
        foreach (var box in page.Shapes.OfType<Box>().Where(b => b.StrokeMm > 0))
        {
            foreach (var (text, _) in texts)
            {
                var ink = text.InkRoom();
                var isInside = ink.Left >= box.XMm - SlackMm && ink.Right <= box.XMm + box.WidthMm + SlackMm
                    && ink.Top >= box.YMm - SlackMm && ink.Bottom <= box.YMm + box.HeightMm + SlackMm;
                Assert.True(isInside || !Meets(ink, (box.XMm, box.YMm, box.XMm + box.WidthMm, box.YMm + box.HeightMm)), $"'{text.Content}' at {ink} crosses {box}.");
            }
        }
        if (hasWordsOnDrawings) return;
        foreach (var outline in page.Shapes.OfType<Outline>())
        {
            var steps = outline.Steps.Where(s => s.Kind != OutlineStepKind.Close).ToList();
            var drawn = (steps.Min(s => s.XMm), steps.Min(s => s.YMm), steps.Max(s => s.XMm), steps.Max(s => s.YMm));
            foreach (var (text, _) in texts) Assert.False(Meets(text.InkRoom(), drawn), $"'{text.Content}' lies on a drawing at {drawn}.");
        }
    }

    private static bool Meets((double Left, double Top, double Right, double Bottom) a, (double Left, double Top, double Right, double Bottom) b) =>
        a.Left < b.Right - SlackMm && b.Left < a.Right - SlackMm && a.Top < b.Bottom - SlackMm && b.Top < a.Bottom - SlackMm;
}
