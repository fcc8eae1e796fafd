namespace Slantwise.Records.Evidence.Growth;

/// <summary>How long a class held one level in one lesson, as far as somebody timed it.</summary>
/// <param name="LessonNumber">The lesson in the evidence, from 1.</param>
/// <param name="PupilCount">Pupils with a timed hold.</param>
/// <param name="TimedCount">Their timed holds.</param>
/// <param name="StoppedCount">Of them, holds that reached the dose: there the watch may have been stopped.</param>
/// <param name="MeanS">The mean over pupils of each one's middle hold.</param>
public sealed record LessonHolds(int LessonNumber, int PupilCount, int TimedCount, int StoppedCount, double MeanS);
