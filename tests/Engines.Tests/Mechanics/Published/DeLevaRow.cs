namespace Slantwise.Engines.Tests.Mechanics.Published;

/// <summary>One definition of one segment, in the units that are printed.</summary>
internal sealed record DeLevaRow(string Sex, string Segment, string From, string To, double MassPercent, double LengthMm, double CentrePercent)
{
    /// <summary>The centre from the first-named end.</summary>
    public double CentreMm => LengthMm * CentrePercent / 100;
}
