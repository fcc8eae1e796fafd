using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Hands;

namespace Slantwise.Surface.Tests.Marks.Measures;

/// <summary>Counts of what became of fields whose truth is known.</summary>
internal sealed class Tally
{
    public int Pages { get; private set; }

    public int RefusedPages { get; private set; }

    /// <summary>Fields read, on pages that were not refused; those nobody can say anything about are not among them.</summary>
    public int Fields { get; private set; }

    public int Marked { get; private set; }

    public int Doubtful { get; private set; }

    /// <summary>Read as marked where nothing is meant.</summary>
    public int FalseMarks { get; private set; }

    /// <summary>Read as empty where something is meant.</summary>
    public int MissedMarks { get; private set; }

    /// <summary>Fields of which nobody can say what is meant, and those among them that were left to a person.</summary>
    public int Open { get; private set; }

    public int OpenDoubtful { get; private set; }

    public int SilentWrong => FalseMarks + MissedMarks;

    public double DoubtfulFraction => Fields > 0 ? (double)Doubtful / Fields : 0;

    public void AddPage(bool isRefused)
    {
        Pages++;
        if (isRefused) RefusedPages++;
    }

    public void AddField(FieldTruth truth, MarkVerdict verdict)
    {
        if (truth.IsOpen)
        {
            Open++;
            if (verdict == MarkVerdict.Doubtful) OpenDoubtful++;
            return;
        }
        Fields++;
        if (truth.IsMarked) Marked++;
        if (verdict == MarkVerdict.Doubtful) Doubtful++;
        else if (verdict == MarkVerdict.Marked && !truth.IsMarked) FalseMarks++;
        else if (verdict == MarkVerdict.Empty && truth.IsMarked) MissedMarks++;
    }
}
