using Slantwise.Engines.Marks;

namespace Slantwise.Engines.Tests.Marks;

/// <summary>What cannot be trusted is refused whole, and never by an exception.</summary>
public sealed class FormFaultTests
{
    private static readonly SheetLayout Form = FilledForm.Form;

    [Fact]
    public void Read_TooFewPixels_TooSmall() => AssertFault(PageFault.TooSmall, TestPhoto.Of(1.9, 2));

    [Fact]
    public void Read_OutOfFocus_Blurred() => AssertFault(PageFault.Blurred, TestPhoto.Of(6, 2) with { BlurReachPx = 5 });

    [Fact]
    public void Read_NearlyNoLight_BadLight() => AssertFault(PageFault.BadLight, TestPhoto.Of(5, 2) with { Light = (_, _) => .1, DeskGrey = 10 });

    [Fact]
    public void Read_WashedOut_NothingSaid()
    {
        // Fog: black is nearly as light as paper.
        var photo = TestPhoto.Of(5, 2) with { NoiseGrey = 3 };
        var image = photo.Taken(FilledForm.Paper);
        var fog = image with { Values = [.. image.Values.Select(v => (byte)(215 + v / 8))] };
        AssertNothing(FormReader.Read(fog, Form, photo.Code(Form.Code)));
    }

    [Theory]
    [InlineData(0, 0, .86, 1, true)]
    [InlineData(.13, 0, 1, 1, true)]
    [InlineData(0, .2, 1, 1, true)]
    [InlineData(0, .4, 1, 1, true)]
    [InlineData(0, 0, 1, .85, false)]
    public void Read_PartOutsideThePicture_CutOff(double left, double top, double right, double bottom, bool isCodeSeen)
    {
        var whole = TestPhoto.Of(5, 1);
        var (x, y) = ((int)(left * whole.WidthPx), (int)(top * whole.HeightPx));
        var photo = new TestPhoto((int)(right * whole.WidthPx) - x, (int)(bottom * whole.HeightPx) - y)
        {
            Corners = [.. whole.Corners.Select(c => new PixelPoint(c.XPx - x, c.YPx - y))], NoiseGrey = 3,
        };
        var reading = FormReader.Read(photo.Taken(FilledForm.Paper), Form, isCodeSeen ? photo.Code(Form.Code) : null);
        AssertNothing(reading);
        if (isCodeSeen) Assert.Equal(PageFault.CutOff, reading.Fault);
    }

    [Fact]
    public void Read_AnotherFormWithTheSameAnchors_NothingSaid()
    {
        var photo = TestPhoto.Of(5, 2) with { NoiseGrey = 4 };
        var image = photo.Taken(FilledForm.Paper);
        AssertNothing(FormReader.Read(image, TestForm.Other, photo.Code(Form.Code)));
        AssertNothing(FormReader.Read(image, TestForm.Other, null));
    }

    [Fact]
    public void Read_AMirroredForm_NothingSaid()
    {
        var photo = TestPhoto.Of(5, 2);
        var image = photo.Taken(FilledForm.Paper);
        var mirrored = image with { Values = [.. image.Values.Chunk(image.WidthPx).SelectMany(row => row.Reverse())] };
        AssertNothing(FormReader.Read(mirrored, Form, null));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(1, 3000)]
    [InlineData(17, 2)]
    [InlineData(700, 900)]
    public void Read_PicturesOfNothing_NothingSaid(int width, int height)
    {
        var noise = new byte[width * height];
        new Random(4).NextBytes(noise);
        byte[][] all =
        [
            new byte[width * height], [.. noise.Select(_ => (byte)255)], noise,
            [.. noise.Select((_, i) => (byte)((i % width / 8 + i / width / 8) % 2 * 255))],
            [.. noise.Select((_, i) => (byte)(i % width % 20 < 9 && i / width % 20 < 9 ? 0 : 255))],
        ];
        CodeSighting?[] codes =
        [
            null, new(new(width * .7, height * .8), new(width * .8, height * .8), new(width * .7, height * .9), .76),
            new(new(5, 5), new(5, 5), new(5, 5), .76), new(new(double.NaN, 0), new(1, 0), new(0, 1), .76), new(new(1e300, 0), new(-1e300, 5), new(0, 1e300), 1e-300),
        ];
        foreach (var values in all)
            foreach (var code in codes)
                AssertNothing(FormReader.Read(new(width, height, values), Form, code));
    }

    [Fact]
    public void Read_WhatIsNoPicture_Throws()
    {
        Assert.Throws<ArgumentException>(() => FormReader.Read(new(0, 5, []), Form, null));
        Assert.Throws<ArgumentException>(() => FormReader.Read(new(5, 5, new byte[24]), Form, null));
        Assert.Throws<ArgumentException>(() => FormReader.Read(new(1, 1, [0]), Form with { Anchors = [.. Form.Anchors.Take(3)] }, null));
    }

    private static void AssertFault(PageFault expected, TestPhoto photo)
    {
        var reading = FormReader.Read(photo.Taken(FilledForm.Paper), Form, photo.Code(Form.Code));
        Assert.Equal(expected, reading.Fault);
        AssertNothing(reading);
    }

    private static void AssertNothing(FormReading reading)
    {
        Assert.NotEqual(PageFault.None, reading.Fault);
        Assert.Empty(reading.Fields);
    }
}
