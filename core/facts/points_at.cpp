#include "core/facts/points_at.h"

namespace bathside {
namespace {

using Seqs = std::vector<Seq>;

Seqs of(const DeviationFound& fact) { return fact.from; }
Seqs of(const Rejudged& fact) { return fact.from; }
Seqs of(const BagReleased& fact) { return fact.of ? Seqs{*fact.of} : Seqs(); }
Seqs of(const DeviationReviewed& fact) { return {fact.of}; }
Seqs of(const NoteCommented& fact) { return {fact.of}; }
Seqs of(const RecordSigned& fact) { return fact.of; }
Seqs of(const FactCorrected& fact) { return {fact.seq}; }
Seqs of(const FactTakenBack& fact) { return fact.seqs; }
Seqs of(const auto&) { return {}; }

}  // namespace

std::vector<Seq> pointsAt(const Fact& fact)
{
    return std::visit([](const auto& one) { return of(one); }, fact);
}

}  // namespace bathside
