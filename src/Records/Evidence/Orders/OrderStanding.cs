namespace Slantwise.Records.Evidence.Orders;

/// <summary>How the entries stand to two neighbouring levels of a sheet. For a question to the teacher: which order is right is not for the entries to say.</summary>
public enum OrderStanding
{
    /// <summary>Too few pupils tried both, and the model mostly assumes.</summary>
    NotEnough,

    /// <summary>Nothing can be told yet.</summary>
    Unclear,

    /// <summary>The entries go with the sheet's order.</summary>
    AsOrdered,

    /// <summary>They lean the other way; it could be chance.</summary>
    PerhapsAgainst,

    /// <summary>They speak against the sheet's order, beyond what chance explains.</summary>
    Against,
}
