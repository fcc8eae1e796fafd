using Slantwise.Records.Scans.Pictures;

namespace Slantwise.Records.Schools;

/// <summary>A school, the outermost owner of everything we keep: every other record carries its id.</summary>
public sealed record School
{
    /// <summary>The school's id, first part of every key.</summary>
    public required Guid Id { get; init; }

    /// <summary>The name as it is printed, 1 to 120 characters.</summary>
    public required string Name { get; init; }

    /// <summary>What this school allows, before any pupil is looked at.</summary>
    public SafetyPolicy Policy { get; init; } = new();

    /// <summary>Which pictures of sheets this school keeps.</summary>
    public PictureKeeping Pictures { get; init; } = new();

    /// <summary>What to do in an emergency here: where the first-aid box and the telephone are, whom to call, 0 to 1000 characters. Printed on risk pages.</summary>
    public string EmergencyNotes { get; init; } = "";
}
