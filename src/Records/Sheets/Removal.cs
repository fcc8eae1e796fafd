using Slantwise.Records.Schools;

namespace Slantwise.Records.Sheets;

/// <summary>Why a policy takes a level from everybody.</summary>
/// <param name="Demand">What the level asks of the body.</param>
/// <param name="HoldCapS">The longest hold that would stay, in seconds, where only the hold is too long; none where the demand is not allowed at all.</param>
public readonly record struct Removal(BodyDemand Demand, int? HoldCapS = null);
