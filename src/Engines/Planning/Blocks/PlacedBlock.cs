namespace Slantwise.Engines.Planning.Blocks;

/// <summary>A block on the time line.</summary>
/// <param name="Category">What most pupils do in it.</param>
/// <param name="StartS">From the begin of the lesson.</param>
/// <param name="EndS">From the begin of the lesson; beyond its end where the blocks are too long.</param>
/// <param name="OverrunEndS">Its end if every talk up to there overruns.</param>
public readonly record struct PlacedBlock(TimeCategory Category, double StartS, double EndS, double OverrunEndS);
