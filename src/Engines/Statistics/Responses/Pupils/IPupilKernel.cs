namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>One pupil at a time: the likelihood with ability integrated out, or conditioned away. Each has working space of its own; not for two threads at once.</summary>
internal interface IPupilKernel
{
    void Add(int pupil, PupilPoint point, PupilSums sums);
}
