namespace Slantwise.Engines.Planning.Queues;

/// <summary>A turn at a place.</summary>
/// <param name="Who">The number of who takes it.</param>
/// <param name="Turn">Which of their turns, from 0.</param>
/// <param name="ComesS">When they come.</param>
/// <param name="StartS">When it begins.</param>
/// <param name="FinishS">When it ends.</param>
internal readonly record struct QueueTurn(int Who, int Turn, double ComesS, double StartS, double FinishS);
