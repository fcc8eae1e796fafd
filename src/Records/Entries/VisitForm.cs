namespace Slantwise.Records.Entries;

/// <summary>How the teacher spoke in a visit.</summary>
public enum VisitForm
{
    /// <summary>Asked a question.</summary>
    Asked = 1,

    /// <summary>Described what was done, without a judgement.</summary>
    Described = 2,

    /// <summary>Named an error and how to correct it.</summary>
    Corrected = 3,

    /// <summary>Gave a judgement, good or bad.</summary>
    Valued = 4,
}
