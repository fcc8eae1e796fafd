using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

public sealed class StraightPictureTests
{
    [Fact]
    public void Of_AFieldOfATurnedPhoto_ShowsItStraight()
    {
        var form = TestForm.A4;
        var paper = PaperRaster.Printed(form);
        var field = form.Fields.First(f => !f.IsRound);
        Pencil.Fill(paper, field);
        var photo = TestPhoto.Of(7, 130, slant: .1);
        var image = photo.Taken(paper);
        var map = FormReader.Read(image, form, photo.Code(form.Code)).Map!;
        var crop = StraightPicture.Of(image, map, field.XMm - 1, field.YMm - 1, field.WidthMm + 2, field.HeightMm + 2, 10);
        Assert.Equal((70, 70), (crop.WidthPx, crop.HeightPx));
        // By hand: the outline's middle lies 10 pixels from the edge on each side, the filling is in the middle, paper near the corner.
        foreach (var at in (int[])[10 * 70 + 35, 60 * 70 + 35, 35 * 70 + 10, 35 * 70 + 60, 35 * 70 + 35]) Assert.True(crop.Values[at] < 150, $"{at}: {crop.Values[at]}");
        Assert.True(crop.Values[5 * 70 + 3] > 180);
    }

    [Fact]
    public void Of_MadeSmaller_TakesTheMean()
    {
        // By hand: columns black and white in turn are grey at half the size.
        var image = new GreyImage(40, 40, [.. Enumerable.Range(0, 1600).Select(i => (byte)(i % 2 * 200))]);
        var small = StraightPicture.Of(image, new Same(), 2, 2, 36, 36, .5);
        Assert.Equal((18, 18), (small.WidthPx, small.HeightPx));
        Assert.All(small.Values, v => Assert.InRange(v, 90, 110));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    [InlineData(1e9)]
    public void Of_ASideThatIsNone_Throws(double widthMm) => Assert.Throws<ArgumentOutOfRangeException>(
        () => StraightPicture.Of(new GreyImage(1, 1, [0]), new Same(), 0, 0, widthMm, 10, 5));

    private sealed class Same : PageMap
    {
        public override PixelPoint At(double xMm, double yMm) => new(xMm, yMm);
    }
}
