using BenchmarkDotNet.Attributes;
using Slantwise.Engines.Marks;
using Slantwise.Engines.Tests.Marks;

namespace Slantwise.Bench.Reading;

/// <summary>Finds and reads one filled page in a photograph of 12 megapixels that it fills; decoding is not counted.</summary>
[MemoryDiagnoser]
public class OnePage
{
    private readonly SheetLayout _form = TestForm.A4;
    private GreyImage _image = new(1, 1, [0]);
    private CodeSighting? _code;

    [GlobalSetup]
    public void Photograph()
    {
        var paper = PaperRaster.Printed(_form);
        for (var i = 0; i < _form.Fields.Count; i += 3) Pencil.Tick(paper, _form.Fields[i]);
        var photo = TestPhoto.Of(12.4, 4, slant: .05) with { NoiseGrey = 6 };
        (_image, _code) = (photo.Taken(paper), photo.Code(_form.Code));
        Console.WriteLine($"{_image.WidthPx} x {_image.HeightPx} pixels, {_form.Fields.Count} fields");
    }

    [Benchmark]
    public FormReading WithCode() => FormReader.Read(_image, _form, _code);

    [Benchmark]
    public FormReading BySquaresAlone() => FormReader.Read(_image, _form, null);
}
