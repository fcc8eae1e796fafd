namespace Slantwise.Records.Halls;

/// <summary>Where mats, stations and the teacher are in a lesson.</summary>
public sealed record HallLayout
{
    /// <summary>A mat's long side, above 0, at most 20 metres.</summary>
    public required double MatLengthM { get; init; }

    /// <summary>A mat's short side, above 0, at most the long one.</summary>
    public required double MatWidthM { get; init; }

    /// <summary>Free floor between two mats, 0 to 10 metres.</summary>
    public required double ClearM { get; init; }

    /// <summary>Free floor to walls and things, 0 to 10 metres.</summary>
    public required double WallClearM { get; init; }

    /// <summary>Whether two falling circles may not overlap either, so that two who fall at once cannot meet.</summary>
    public bool AreCirclesApart { get; init; }

    /// <summary>The age the class is reckoned with, 5 to 18 years; none where nobody said.</summary>
    public int? AgeYears { get; init; }

    /// <summary>The mats, at most 100.</summary>
    public IReadOnlyList<LaidMat> Mats { get; init; } = [];

    /// <summary>Where the teacher stands, metres from the left wall; none where nobody said.</summary>
    public double? TeacherXM { get; init; }

    /// <summary>Where the teacher stands, metres from the front wall; none where nobody said.</summary>
    public double? TeacherYM { get; init; }

    /// <summary>The stations, at most 12; none where all do the same.</summary>
    public IReadOnlyList<HallStation> Stations { get; init; } = [];

    /// <summary>How long a group stays at a station, in whole minutes, 1 to 60; none without stations.</summary>
    public int? StationMin { get; init; }
}
