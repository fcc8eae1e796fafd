using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Slantwise.Engines.Marks;

namespace Slantwise.Records.Scans;

/// <summary>A form's layout as it was printed, kept by its tag: what lies on paper can be read for ever, whatever a later edition prints.</summary>
public sealed record PrintedLayout
{
    /// <summary>How the text is made today.</summary>
    public const int LatestFormat = 1;

    private static readonly JsonSerializerOptions Json = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
    };

    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The tag that a form's code names: of the text, by <see cref="SheetCode.TagOf(ReadOnlySpan{byte})"/>.</summary>
    public required long Tag { get; init; }

    /// <summary>How the text is made, from 1.</summary>
    public required int Format { get; init; }

    /// <summary>The form as JSON, lengths in hundredths of a millimetre.</summary>
    public required string Text { get; init; }

    /// <summary>A layout ready to be kept.</summary>
    /// <param name="schoolId">The school that prints it.</param>
    /// <param name="layout">The form; lengths are rounded to 0.01 mm.</param>
    /// <param name="rowTags">On an observation sheet the tag of the pupil of each row, from the first; none on a pupil's sheet.</param>
    public static PrintedLayout Of(Guid schoolId, SheetLayout layout, IReadOnlyList<long>? rowTags = null)
    {
        var text = JsonSerializer.Serialize(new KeptForm(Rounded(layout), rowTags ?? []), Json);
        return new() { SchoolId = schoolId, Tag = SheetCode.TagOf(Encoding.UTF8.GetBytes(text)), Format = LatestFormat, Text = text };
    }

    /// <summary>The form this is.</summary>
    /// <exception cref="InvalidDataException">A later format, or a text that is no form.</exception>
    public KeptForm Form()
    {
        if (Format != LatestFormat) throw new InvalidDataException($"The layout {Tag} is kept in format {Format}; this program reads format {LatestFormat}. Use the newer version.");
        try
        {
            if (JsonSerializer.Deserialize<KeptForm>(Text, Json) is { Layout: { Anchors: not null, Code: not null, Fields: not null, Writings: not null }, RowTags: not null } form)
                return form;
        }
        catch (JsonException error)
        {
            throw new InvalidDataException($"The layout {Tag} cannot be read: its text is damaged.", error);
        }
        throw new InvalidDataException($"The layout {Tag} cannot be read: its text is no form.");
    }

    private static SheetLayout Rounded(SheetLayout layout) => new(
        Mm(layout.WidthMm),
        Mm(layout.HeightMm),
        [.. layout.Anchors.Select(a => a with { XMm = Mm(a.XMm), YMm = Mm(a.YMm), SizeMm = Mm(a.SizeMm) })],
        new CodePlace(Mm(layout.Code.XMm), Mm(layout.Code.YMm), Mm(layout.Code.SizeMm)),
        [.. layout.Fields.Select(f => f with { XMm = Mm(f.XMm), YMm = Mm(f.YMm), WidthMm = Mm(f.WidthMm), HeightMm = Mm(f.HeightMm) })],
        [.. layout.Writings.Select(w => w with { XMm = Mm(w.XMm), YMm = Mm(w.YMm), WidthMm = Mm(w.WidthMm), HeightMm = Mm(w.HeightMm) })]);

    private static double Mm(double lengthMm) => Math.Round(lengthMm, 2);
}
