using Slantwise.Records.Lessons;

namespace Slantwise.Records.Planning;

/// <summary>Where practice lies in a lesson: what else there is comes before, between and after it.</summary>
internal sealed class LessonClock
{
    private readonly List<(double StartS, double EndS)> _practice = [];

    public LessonClock(IReadOnlyList<LessonSpan> spans)
    {
        foreach (var span in spans)
        {
            var startS = TotalS;
            TotalS += span.DurationS;
            if (span.Kind != PhaseKind.Activity) continue;
            _practice.Add((startS, TotalS));
        }
        double atS = 0;
        foreach (var span in spans)
        {
            if (span.Kind == PhaseKind.Instruction && atS < EndS) InstructionS += span.DurationS;
            atS += span.DurationS;
        }
    }

    /// <summary>All phases together.</summary>
    public double TotalS { get; }

    /// <summary>Whether there is a phase of practice: without one, less talk gives nobody a try.</summary>
    public bool HasPractice => _practice.Count > 0;

    /// <summary>When the last phase of practice ends; the end of the lesson where there is none.</summary>
    public double EndS => _practice.Count > 0 ? _practice[^1].EndS : TotalS;

    /// <summary>Everything before that end that is not practice.</summary>
    public double BesideS => EndS - _practice.Sum(p => p.EndS - p.StartS);

    /// <summary>Talk before that end.</summary>
    public double InstructionS { get; }

    /// <summary>The time of the lesson at which so much practice is over.</summary>
    public double AtS(double practisedS)
    {
        foreach (var (startS, endS) in _practice)
        {
            if (practisedS <= endS - startS) return startS + practisedS;
            practisedS -= endS - startS;
        }
        return EndS + practisedS;
    }
}
