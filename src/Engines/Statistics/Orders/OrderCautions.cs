namespace Slantwise.Engines.Statistics.Orders;

/// <summary>What a reader of an order, or of a change over time, has to know before believing it.</summary>
[Flags]
public enum OrderCautions
{
    /// <summary>Nothing to say.</summary>
    None = 0,

    /// <summary>There is nothing to look at.</summary>
    NoData = 1,

    /// <summary>Fewer than 10 pupils.</summary>
    FewPupils = 1 << 1,

    /// <summary>More than half of the pupils' levels were not tried. Who tries a level is no accident, so the order is seen through choices.</summary>
    MostlyUntried = 1 << 2,

    /// <summary>Each level was passed by all or by none: any order reproduces that, so scalability is not defined.</summary>
    NothingToOrder = 1 << 3,

    /// <summary>Fewer than 5 points, or all at one time: no curve is given below three points at different times.</summary>
    FewPoints = 1 << 4,

    /// <summary>The search for the best curve ended before it was good; that curve is not given.</summary>
    NotConverged = 1 << 5,
}
