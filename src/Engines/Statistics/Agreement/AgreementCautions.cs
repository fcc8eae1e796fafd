namespace Slantwise.Engines.Statistics.Agreement;

/// <summary>What a reader of an agreement has to know before believing it.</summary>
[Flags]
public enum AgreementCautions
{
    /// <summary>Nothing to say.</summary>
    None = 0,

    /// <summary>Nothing was judged by both.</summary>
    NoPairs = 1,

    /// <summary>Fewer than 10 were judged by both: show the counts and no coefficient.</summary>
    FewPairs = 1 << 1,

    /// <summary>No disagreement was possible, for all gave one answer throughout: agreement beyond chance is not defined. It is neither 0 nor 1.</summary>
    OneCategory = 1 << 2,

    /// <summary>More than 85 in 100 of the answers are one answer: kappa and alpha fall though nearly all agree. Show the share that agrees and AC1 first.</summary>
    MostlyOneCategory = 1 << 3,

    /// <summary>Errors come from fewer than 6 pupils, too few to trust.</summary>
    FewPupils = 1 << 4,

    /// <summary>Without one of the pupils the figure is not defined, so leaving pupils out gives no error.</summary>
    HangsOnOnePupil = 1 << 5,
}
