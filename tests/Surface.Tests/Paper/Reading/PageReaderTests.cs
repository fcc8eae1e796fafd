using SkiaSharp;
using Slantwise.Engines.Marks;
using Slantwise.Paper.Reading;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;

namespace Slantwise.Surface.Tests.Paper.Reading;

public sealed class PageReaderTests
{
    private static readonly SheetLayout Layout = DrawnForm.Layout();
    private static readonly string[] Marked = ["Level-1-1-2", "Held-1-1-1", "NotYet-1-1-2", "Next-1-1-2"];

    private static ExpectedForms Expected(params KnownForm[] withoutCode) => new(DrawnForm.School, (tag, _) => Task.FromResult(tag == 5 ? Layout : null))
    {
        WithoutCode = withoutCode,
    };

    private static async Task<List<ReadPage>> ReadAsync(byte[] bytes, ExpectedForms? expected = null, ReadingLimits? limits = null)
    {
        var pages = new List<ReadPage>();
        await foreach (var page in new PageReader(limits ?? new ReadingLimits()).ReadAsync(ScanFile.Of("a.jpg", bytes), expected ?? Expected())) pages.Add(page);
        return pages;
    }

    private static string[] MarkedOf(ReadForm form) => [.. form.Reading.Fields.Where(f => f.Verdict != MarkVerdict.Empty).Select(f => f.Key)];

    [Fact]
    public async Task Read_PhotoOfAForm_GivesItsCodeAndMarks()
    {
        using var page = DrawnForm.Draw(Layout, DrawnForm.Code().Write(DrawnForm.School), Marked);
        var read = Assert.Single(await ReadAsync(DrawnForm.Jpeg(page)));
        Assert.Null(read.Problem);
        var form = Assert.Single(read.Forms);
        Assert.Equal((CodeFound.Read, DrawnForm.Code()), (form.CodeFound, form.Code));
        Assert.Equal(Marked.Order(), MarkedOf(form).Order());
    }

    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(8)]
    public async Task Read_PhotoHeldAnotherWay_GivesTheSameMarks(int orientation)
    {
        using var page = DrawnForm.Draw(Layout, DrawnForm.Code().Write(DrawnForm.School), Marked);
        var form = (await ReadAsync(DrawnForm.WithOrientation(DrawnForm.Jpeg(page), orientation)))[0].Forms[0];
        Assert.Equal(Marked.Order(), MarkedOf(form).Order());
    }

    [Fact]
    public async Task Read_TwoFormsOnOnePage_GivesBoth()
    {
        using var bitmap = new SKBitmap(2380, 1680, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.White);
            DrawnForm.DrawOn(canvas, Layout, DrawnForm.Code(pupilTag: 1).Write(DrawnForm.School), ["Level-1-1-1"], 5.66f);
            canvas.Translate(1190, 0);
            DrawnForm.DrawOn(canvas, Layout, DrawnForm.Code(pupilTag: 2).Write(DrawnForm.School), ["Level-1-1-3"], 5.66f);
        }
        var forms = Assert.Single(await ReadAsync(DrawnForm.Jpeg(bitmap))).Forms;
        Assert.Equal([(1L, "Level-1-1-1"), (2L, "Level-1-1-3")], forms.Select(f => (f.Code!.PupilTag, Assert.Single(MarkedOf(f)))).Order());
    }

    [Fact]
    public async Task Read_AnotherSchoolsForm_SaysSoAndReadsNothing()
    {
        using var page = DrawnForm.Draw(Layout, DrawnForm.Code().Write(new Guid("01990000-0000-7000-8000-00000000aa02")), Marked);
        var form = Assert.Single((await ReadAsync(DrawnForm.Jpeg(page)))[0].Forms);
        Assert.Equal(CodeFound.OtherSchool, form.CodeFound);
        Assert.Empty(form.Reading.Fields);
    }

    [Fact]
    public async Task Read_ACodeThatIsNoSheets_SaysSo()
    {
        using var page = DrawnForm.Draw(Layout, "HTTPS://EXAMPLE.ORG", Marked);
        Assert.Equal(CodeFound.Foreign, Assert.Single((await ReadAsync(DrawnForm.Jpeg(page)))[0].Forms).CodeFound);
    }

    [Fact]
    public async Task Read_NoCodeAndAKnownForm_IsReadAsThatForm()
    {
        using var page = DrawnForm.Draw(Layout, null, Marked);
        var other = DrawnForm.Layout(setCount: 3, levelCount: 3);
        var form = Assert.Single((await ReadAsync(DrawnForm.Jpeg(page), Expected(new KnownForm(9, other), new KnownForm(5, Layout))))[0].Forms);
        Assert.Equal((CodeFound.None, 5L), (form.CodeFound, form.LayoutTag));
        Assert.Equal(Marked.Order(), MarkedOf(form).Order());
    }

    [Fact]
    public async Task Read_NoCodeAndOnlyAnotherForm_IsNotReadAsThatOne()
    {
        // The squares are the same on every form; the fields are not.
        using var page = DrawnForm.Draw(Layout, null, Marked);
        var form = Assert.Single((await ReadAsync(DrawnForm.Jpeg(page), Expected(new KnownForm(9, DrawnForm.Layout(setCount: 3, levelCount: 3)))))[0].Forms);
        Assert.Null(form.LayoutTag);
        Assert.Empty(form.Reading.Fields);
    }

    [Fact]
    public async Task Read_SmallFormInALargePhoto_IsReadFromMorePixels()
    {
        // 48 % of the picture's width: half of 4000 pixels leaves too few a millimetre.
        using var bitmap = new SKBitmap(4000, 3000, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(new SKColor(90, 70, 60));
            canvas.Translate(1000, 800);
            using var white = new SKPaint { Color = new SKColor(235, 235, 230) };
            canvas.DrawRect(0, 0, 210 * 6f, 297 * 6f, white);
            DrawnForm.DrawOn(canvas, Layout, DrawnForm.Code().Write(DrawnForm.School), Marked, 6f);
        }
        var form = Assert.Single((await ReadAsync(DrawnForm.Jpeg(bitmap)))[0].Forms);
        Assert.Equal(PageFault.None, form.Reading.Fault);
        Assert.Equal(Marked.Order(), MarkedOf(form).Order());
    }

    [Fact]
    public async Task Crop_OfAField_ShowsItsMarkUpright()
    {
        using var page = DrawnForm.Draw(Layout, DrawnForm.Code().Write(DrawnForm.School), Marked);
        var read = (await ReadAsync(DrawnForm.WithOrientation(DrawnForm.Jpeg(page), 6)))[0];
        var field = Layout.Fields.Single(f => f.Key == "Held-1-1-1");
        using var crop = SKBitmap.Decode(read.Picture!.Crop(read.Forms[0].Reading.Map!, FormArea.Around([field])));
        Assert.InRange(crop.Width, 43, 45);
        Assert.True(crop.GetPixel(22, 22).Red < 120, "The middle of a cross is dark.");
        Assert.True(crop.GetPixel(22, 10).Red > 180, "Between its arms there is paper.");
    }

    [Fact]
    public async Task InkFraction_OfAnEmptyAndAWrittenPlace_TellsThemApart()
    {
        using var page = DrawnForm.Draw(Layout, DrawnForm.Code().Write(DrawnForm.School), []);
        using (var canvas = new SKCanvas(page))
        {
            using var pencil = new SKPaint { Color = new SKColor(120, 120, 120), StrokeWidth = 5, IsStroke = true, IsAntialias = true };
            canvas.DrawLine(160 * 8, 205 * 8, 163 * 8, 213 * 8, pencil);
            canvas.DrawLine(20 * 8, 232 * 8, 150 * 8, 232.4f * 8, pencil);
        }
        var read = (await ReadAsync(DrawnForm.Jpeg(page)))[0];
        var map = read.Forms[0].Reading.Map!;
        Assert.InRange(read.Picture!.InkFraction(map, new FormArea(100, 202, 8, 12)), 0, 0.002);
        Assert.InRange(read.Picture.InkFraction(map, new FormArea(157, 202, 8, 12)), 0.02, 0.3);
        // A line to write on, a little aslant as curled paper makes it.
        Assert.InRange(read.Picture.InkFraction(map, new FormArea(25, 226, 120, 12)), 0, 0.002);
    }

    [Fact]
    public async Task Read_TooManyBytes_IsSaid()
    {
        using var page = DrawnForm.Draw(Layout, null, []);
        Assert.Equal(ScanRemarkKind.FileTooLarge, (await ReadAsync(DrawnForm.Jpeg(page), limits: new ReadingLimits { MaxByteCount = 1000 }))[0].Problem!.Kind);
    }

    [Fact]
    public async Task Read_NothingInIt_IsSaid() => Assert.Equal(ScanRemarkKind.FileEmpty, (await ReadAsync([]))[0].Problem!.Kind);

    [Fact]
    public async Task Read_FileThatCannotBeOpened_IsSaid()
    {
        var file = new ScanFile("gone.jpg", _ => throw new FileNotFoundException("It is gone."));
        var pages = new List<ReadPage>();
        await foreach (var page in new PageReader(new ReadingLimits()).ReadAsync(file, Expected())) pages.Add(page);
        Assert.Equal(ScanRemarkKind.FileNotOpened, Assert.Single(pages).Problem!.Kind);
    }
}
