using System.Globalization;
using Slantwise.Records.Words;

namespace Slantwise.Records.Scans.Intake;

/// <summary>Something to say about a file or a page as a whole.</summary>
/// <param name="Kind">What.</param>
/// <param name="Details">What its sentence's gaps are filled with: names and numbers as text, a day as 2026-11-03.</param>
public sealed record ScanRemark(ScanRemarkKind Kind, params string[] Details)
{
    /// <summary>The remark as a sentence.</summary>
    /// <param name="culture">The reader's language; English where there is no translation.</param>
    public string Sentence(CultureInfo culture) => ScanWords.Sentence(Kind.ToString(), culture, Details);

    /// <summary>Remarks of the same kind with the same details are the same.</summary>
    /// <param name="other">Another.</param>
    public bool Equals(ScanRemark? other) => other is not null && other.Kind == Kind && other.Details.AsSpan().SequenceEqual(Details);

    /// <summary>Of the kind alone: few remarks are ever compared.</summary>
    public override int GetHashCode() => (int)Kind;
}
