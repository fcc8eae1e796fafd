namespace Slantwise.Records.Units.Import;

/// <summary>What a file of outcomes says about copying its sentences.</summary>
public enum LicenceStanding
{
    /// <summary>It names an open licence, or the public domain.</summary>
    Open = 1,

    /// <summary>It names a licence or rights that are not known to be open.</summary>
    Closed = 2,

    /// <summary>It names none.</summary>
    Unnamed = 3,

    /// <summary>It names neither a framework nor codes: a list of the teacher's own.</summary>
    Own = 4,
}
