# shellcheck shell=bash disable=SC2034
# Sourced by `keenward` and `verify`.

# Sets jdk to the folder of a JDK of release $1 or newer and returns 0, or returns 1.
# Reads the file `release` of each candidate: asking `java -version` costs a second.
find_jdk() {
  local least=$1 candidate program
  program=$(command -v javac) || program=
  if [[ -n $program ]]; then
    program=$(readlink -f -- "$program" 2>/dev/null) || program=
  fi
  for candidate in \
    "${JAVA_HOME:-}" \
    "${program%/bin/javac}" \
    /usr/lib/jvm/* \
    "${SDKMAN_DIR:-${HOME:-}/.sdkman}"/candidates/java/* \
    "${HOME:-}"/.jdks/* \
    /opt/java/* \
    /Library/Java/JavaVirtualMachines/*/Contents/Home; do
    if [[ -n $candidate && -x $candidate/bin/javac ]] && is_release "$candidate" "$least"; then
      jdk=$candidate
      return 0
    fi
  done
  return 1
}

is_release() {
  local line version
  [[ -r $1/release ]] || return 1
  while read -r line; do
    case $line in
      JAVA_VERSION=*)
        version=${line#JAVA_VERSION=}
        version=${version//\"/}
        version=${version%%[!0-9]*}
        [[ -n $version ]] && ((version >= $2))
        return
        ;;
    esac
  done <"$1/release"
  return 1
}
