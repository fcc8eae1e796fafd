namespace Slantwise.Records.Scans.Pictures;

/// <summary>Which pictures of sheets a school keeps once everything on them is settled.</summary>
public sealed record PictureKeeping
{
    /// <summary>Pupils' own words, beside their record. Kept until the teacher changes it.</summary>
    public bool KeepsWords { get; init; } = true;

    /// <summary>The photographed pages. Not kept until the teacher changes it.</summary>
    public bool KeepsPhotos { get; init; }
}
