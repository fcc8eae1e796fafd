namespace Slantwise.Engines.Statistics.Responses.Terms;

/// <summary>
/// One term of a pupil's log-likelihood, A·η − M·log(1 + exp(η + γ·τ)), where η is the logit of success at the level's own dose.
/// Ticks are one such term with τ = 0; a timed fall is two or three. So ticks and times share every line of the arithmetic. τ, the logarithm of the level's
/// hold over the moment meant, stands apart: most data have no times, and very many terms should lie close together.
/// </summary>
/// <param name="Own">The level, as an index into the pupil's own levels.</param>
/// <param name="State">The lesson, as an index into the pupil's own later lessons; −1 where ability has not wandered yet.</param>
/// <param name="Lesson">The lesson's number.</param>
/// <param name="M">How often; −1 where the curve is cut at the first moment.</param>
/// <param name="A">Successes, for ticks.</param>
internal readonly record struct Term(ushort Own, short State, ushort Lesson, float M, float A);
