namespace Slantwise.Records.Units;

/// <summary>An outcome in a lesson.</summary>
/// <param name="PlannedTaskCount">Tasks of the lesson that work towards it; 0 where it is not planned there.</param>
/// <param name="TriedPupilCount">Pupils with a try at one of those tasks in that lesson.</param>
/// <param name="TryCount">Their tries.</param>
public readonly record struct CoverageCell(int PlannedTaskCount, int TriedPupilCount, int TryCount)
{
    /// <summary>Whether the lesson works towards the outcome.</summary>
    public bool IsPlanned => PlannedTaskCount > 0;
}
