namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>A kernel that keeps abilities and can say what they are afterwards.</summary>
internal interface IAbilityKernel : IPupilKernel
{
    /// <summary>Ability in one lesson, given the rows.</summary>
    PupilPosterior Posterior(int pupil, int lesson, PupilPoint point);
}
