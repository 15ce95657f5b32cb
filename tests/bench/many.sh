#!/bin/sh
# What many.sh is measured for: device credentials by the OpenSSL command line, one after another.
#   sh many.sh authority FOLDER      make a CA
#   sh many.sh devices FOLDER COUNT  make COUNT keys, certificates and PKCS#12 files with 600,000 rounds
set -eu
cd -- "$2"

if [ "$1" = authority ]; then
    openssl ecparam -name secp384r1 -genkey -noout -out ca.key
    openssl req -new -x509 -sha384 -key ca.key -subj "/O=Quince Cottage (practice)/CN=Script" -days 3650 -out ca.pem
    exit
fi

number=1
while [ "$number" -le "$3" ]; do
    name=d$number.quince.example
    openssl ecparam -name prime256v1 -genkey -noout -out "$number.key"
    openssl req -new -key "$number.key" -subj "/CN=$name" -out "$number.csr"
    cat >"$number.ext" <<EXTENSIONS
authorityKeyIdentifier = keyid
keyUsage = critical, digitalSignature
extendedKeyUsage = clientAuth, 1.3.6.1.5.5.7.3.17
subjectAltName = DNS:$name
EXTENSIONS
    openssl x509 -req -sha384 -in "$number.csr" -CA ca.pem -CAkey ca.key -set_serial "$number" -days 730 \
        -extfile "$number.ext" -out "$number.pem"
    openssl pkcs12 -export -inkey "$number.key" -in "$number.pem" -certfile ca.pem -name "$name" \
        -keypbe AES-256-CBC -certpbe AES-256-CBC -macalg sha256 -iter 600000 \
        -passout "pass:kettle lantern orchard meadow pantry gravel sunlit" -out "$number.p12"
    rm -f -- "$number.key" "$number.csr" "$number.ext"
    number=$((number + 1))
done
